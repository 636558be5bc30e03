// A table read with types, units and warnings, against its bare parse: the first reading of a new process, and later ones, in turns.
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { BenchLine } from "./bench-line.ts";
import { largeTable } from "./large-notebook.ts";
import { costOfReading, type ReadingCost } from "./one-reading.ts";
import { untidyTable } from "./untidy-table.ts";

const ROWS = 100_000;
const ROUNDS = 5;
const median = (values: readonly number[]) => [...values].sort((a, b) => a - b)[values.length >> 1] ?? Number.NaN;
const times = (costs: readonly ReadingCost[]) => median(costs.map(({ time }) => time));

function memoryOf(costs: readonly ReadingCost[]): string {
  const share = (part: "kept" | "peak") => median(costs.map((cost) => cost[part] / cost.size)).toFixed(1);
  return `kept afterwards ${share("kept")} x the file, at most ${share("peak")} x (aims: 6 and 12)`;
}

const SHAPES = [
  { shape: "100,000 rows x 12 columns", textOf: (rows: number) => largeTable(rows, 12) },
  { shape: "100,000 rows x 13, one number in a hundred untidy", textOf: untidyTable },
] as const;

/** Reading against papaparse, and twice the rows against once. */
function linesOf({ shape, textOf }: (typeof SHAPES)[number], folder: string): BenchLine[] {
  const [once, twice] = [join(folder, "once.csv"), join(folder, "twice.csv")];
  writeFileSync(once, textOf(ROWS));
  writeFileSync(twice, textOf(2 * ROWS));
  const costs = { ours: [] as ReadingCost[], parse: [] as ReadingCost[], double: [] as ReadingCost[] };
  for (let round = 0; round < ROUNDS; round++) {
    costs.parse.push(costOfReading(once, "papaparse"));
    costs.ours.push(costOfReading(once, "readTable"));
    costs.double.push(costOfReading(twice, "readTable"));
  }
  const [ours, parse, double] = [times(costs.ours), times(costs.parse), times(costs.double)];
  const best = (all: readonly ReadingCost[]) => Math.min(...all.map(({ again }) => again));
  const [oursAgain, parseAgain] = [best(costs.ours), best(costs.parse)];
  const size = (costs.ours[0]?.size ?? 0) / 1e6;
  return [
    {
      name: `readTable again, ${shape}`,
      baseline: "papaparse, bare parse of the same text",
      ours: oursAgain,
      theirs: parseAgain,
      aim: { words: "at most 2 x", within: oursAgain <= 2 * parseAgain },
    },
    {
      name: `the first of a new process, ${shape}`,
      baseline: "papaparse, bare parse of the same text",
      ours,
      theirs: parse,
      aim: { words: "at most 2 x", within: ours <= 2 * parse },
      note: `${size.toFixed(1)} MB; every cell typed, with unit and warnings; ${memoryOf(costs.ours)}`,
    },
    {
      name: "the same with twice the rows",
      baseline: "the first reading of 100,000 rows",
      ours: double,
      theirs: ours,
      aim: { words: "at most 2.2 x", within: double <= 2.2 * ours },
    },
  ];
}

export function tableRead(): BenchLine[] {
  const folder = mkdtempSync(join(tmpdir(), "thumbrule-bench-"));
  try {
    return SHAPES.flatMap((shape) => linesOf(shape, folder));
  } finally {
    rmSync(folder, { recursive: true });
  }
}
