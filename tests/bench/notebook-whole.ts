// The demo notebook whole, from bytes to findings, against the bare parse of the same tables.
import { readFileSync } from "node:fs";
import Papa from "papaparse";
import { createNotebookEngine } from "../../src/notebook/engine/index.ts";
import { type BenchLine, benchLine } from "./bench-line.ts";

const folder = new URL("../../notebooks/", import.meta.url);
const bytesOf = (name: string): Uint8Array | null => {
  try {
    return readFileSync(new URL(name, folder));
  } catch {
    return null;
  }
};

/** notebooks/stiffer-tops.md, computed. */
export async function notebookWhole(): Promise<BenchLine> {
  const text = readFileSync(new URL("stiffer-tops.md", folder), "utf8");
  const files = new Map<string, Uint8Array | null>();
  const readFile = async (path: string) => {
    if (!files.has(path)) files.set(path, bytesOf(path));
    return files.get(path) ?? null;
  };
  const tables = ["records/tops.csv", "records/instruments.csv"].map((name) =>
    new TextDecoder().decode(bytesOf(name) ?? new Uint8Array()),
  );
  return benchLine({
    name: "demo notebook whole",
    baseline: "papaparse, bare parse of its two tables",
    aim: "no aim set",
    theirs: () => tables.map((table) => Papa.parse(table).data.length),
    ours: async () => {
      const engine = createNotebookEngine({ readFile, schedule: setImmediate, asOf: null, version: "bench" });
      engine.update(text, "stiffer-tops.md");
      await engine.settled();
      const entries = engine.result().entries.length;
      engine.dispose();
      return entries;
    },
  });
}
