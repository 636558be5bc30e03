// A machine of invented files for the tests of the command line.
import type { Surface } from "../../src/cli/surface.ts";

/** `written` holds what was written as text, `bytes` what was written as bytes. */
export type SmallSurface = Surface & {
  readonly written: Map<string, string>;
  readonly bytes: Map<string, Uint8Array>;
};

/** A surface over texts by path; lines are what stands on stdin. */
export function smallSurface(files: Readonly<Record<string, string>>, lines: readonly string[] = []): SmallSurface {
  const written = new Map<string, string>();
  const bytes = new Map<string, Uint8Array>();
  const all = () => [...Object.keys(files), ...written.keys(), ...bytes.keys()];
  const write = (path: string, content: string | Uint8Array) => {
    if (typeof content === "string") written.set(path, content);
    else bytes.set(path, content);
  };
  return {
    version: "test",
    written,
    bytes,
    read: async (path) => {
      const text = written.get(path) ?? (Object.hasOwn(files, path) ? files[path] : undefined);
      return text === undefined ? (bytes.get(path) ?? null) : new TextEncoder().encode(text);
    },
    write: async (path, content) => {
      write(path, content);
      return { ok: true };
    },
    writeFolder: async (path, contents) => {
      if (all().some((each) => each.startsWith(`${path}/`))) return { ok: false, reason: "taken" };
      for (const [name, text] of contents) write(`${path}/${name}`, text);
      return { ok: true };
    },
    stdin: async function* () {
      yield* lines;
    },
    built: async (name) => (name.endsWith(".js") ? "export {};" : name.endsWith(".css") ? "p { margin: 0 }" : null),
    staticView: async () => (view) => `<p>${view.kind}</p>`,
  };
}
