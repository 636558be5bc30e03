// The demo notebook whole, from bytes to findings, against the bare parse of the same tables.
import Papa from "papaparse";
import { createNotebookEngine } from "../../src/notebook/engine/index.ts";
import { type BenchLine, benchLine } from "./bench-line.ts";
import { demoText, readDemoFile, tablesRead } from "./demo-files.ts";

/** notebooks/stiffer-tops.md, computed. */
export async function notebookWhole(): Promise<BenchLine> {
  const text = demoText();
  const ours = async () => {
    const engine = createNotebookEngine({
      readFile: readDemoFile,
      schedule: setImmediate,
      asOf: null,
      version: "bench",
    });
    engine.update(text, "stiffer-tops.md");
    await engine.settled();
    const entries = engine.result().entries.length;
    engine.dispose();
    return entries;
  };
  const entries = await ours();
  const tables = tablesRead();
  return benchLine({
    name: "demo notebook whole, read to findings",
    baseline: `papaparse, bare parse of its ${tables.length} tables`,
    ours,
    theirs: () => tables.map((table) => Papa.parse(table).data.length),
    repeated: 50,
    rounds: 25,
    note: `${entries} entries; the parse is repeated 50 times a measurement and counted once`,
  });
}
