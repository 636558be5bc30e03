import type { RunningServer } from "./start-server.ts";

/** Ends the process well on SIGINT and SIGTERM: what is being written is finished first. */
export function stopOnSignals(server: RunningServer): void {
  for (const signal of ["SIGINT", "SIGTERM"] as const)
    process.once(signal, () => void server.close().then(() => process.exit(0)));
}
