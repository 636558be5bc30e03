import { createNotebookEngine } from "../../src/notebook/engine/index.ts";
import { canonicalJson } from "../../src/notebook/share/canonical-json.ts";

export type FileReader = (path: string) => Promise<Uint8Array | null>;
export const DEMO = "stiffer-tops.md";

/** Everything the demo notebook comes to, in one spelling: an entry a line, so that a difference names its entry. */
export async function demoFindings(readFile: FileReader, schedule?: (job: () => void) => void): Promise<string> {
  const engine = createNotebookEngine({
    readFile,
    asOf: "2026-03-14",
    version: "test",
    ...(schedule ? { schedule } : {}),
  });
  engine.update(new TextDecoder().decode((await readFile(DEMO)) ?? new Uint8Array()), DEMO);
  await engine.settled();
  const { entries, problems } = engine.result();
  const tables = [...engine.tables()].map(([name, { columns }]) => ({
    name,
    columns: [...columns.values()].map((column) =>
      column.kind === "quantity" ? [column.name, ...[...column.values].map(String)] : [column.name],
    ),
  }));
  engine.dispose();
  return [...entries, problems, ...tables].map(canonicalJson).join("\n");
}
