// A table read with types, units and warnings, against its bare parse.
import Papa from "papaparse";
import { readTable } from "../../src/core/records/index.ts";
import { type BenchLine, benchLine } from "./bench-line.ts";
import { largeTable } from "./large-notebook.ts";

/** 100,000 rows of twelve columns. */
export async function tableRead(): Promise<BenchLine> {
  const text = largeTable(100_000, 12);
  const bytes = new TextEncoder().encode(text);
  const rows = readTable(bytes, "records/large.csv").tables[0]?.rowCount ?? 0;
  if (rows !== 100_000) throw new Error(`${rows} rows were read`);
  return benchLine({
    name: "readTable, 100,000 rows x 12 columns",
    baseline: "papaparse, bare parse of the same text",
    ours: () => readTable(bytes, "records/large.csv"),
    theirs: () => Papa.parse(text).data.length,
    atMost: 2,
    rounds: 3,
    note: `${(bytes.length / 1e6).toFixed(1)} MB; every cell typed, with unit and warnings`,
  });
}
