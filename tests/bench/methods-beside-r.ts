// Methods of the catalogue against R's functions for the same step on the same machine in this run; no lines where R is not installed.
import { execFileSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { methods } from "../../src/notebook/engine/index.ts";
import { notebookSteps, topsFromCsv } from "../reference/notebook-steps.ts";
import { type BenchLine, timeOf } from "./bench-line.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));
const TABLE = `${root}tests/reference/stats/data/tops-300.csv`;

/** Milliseconds of each step in R, and which R it was; null where there is none on this machine, or a package of it is missing. */
function stepsInR(): { readonly version: string; readonly steps: Readonly<Record<string, number>> } | null {
  const run = (args: readonly string[]) =>
    execFileSync("Rscript", args, { encoding: "utf8", stdio: ["ignore", "pipe", "ignore"] });
  try {
    const version = run(["-e", "cat(paste(R.version$major, R.version$minor, sep = '.'))"]);
    return { version, steps: JSON.parse(run([`${root}tests/bench/steps.R`, TABLE])) as Record<string, number> };
  } catch {
    return null;
  }
}

function noise(seed: number): () => number {
  let state = seed;
  const even = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  };
  return () => Math.sqrt(-2 * Math.log(even())) * Math.cos(2 * Math.PI * even());
}

const pairs = (rows: number, seed: number) => {
  const next = noise(seed);
  const x = Float64Array.from({ length: rows }, next);
  return { x, y: x.map((value) => value + next()) };
};

const run = (id: string, inputs: Readonly<Record<string, unknown>>): void => {
  const outcome = methods.find((one) => one.id === id)?.run(inputs);
  if (!outcome?.ok) throw new Error(`${id} declined: ${JSON.stringify(outcome)}`);
};

/** Steps with an aim of their own: what is asked of them, in milliseconds or as a ratio to R. */
type Aimed = {
  readonly step: string;
  readonly name: string;
  readonly id: string;
  readonly most: number;
  readonly inputs: Readonly<Record<string, unknown>>;
};
const aimed = (): readonly Aimed[] => [
  {
    step: "bootstrap_200",
    name: "bootstrap BCa of a slope, 10,000 × 200",
    most: 40,
    inputs: { ...pairs(200, 1), statistic: "slope", draws: 10_000 },
    id: "bootstrap",
  },
  {
    step: "permutation_300",
    name: "permutation within groups, 10,000 × 300",
    most: Number.POSITIVE_INFINITY,
    inputs: { ...pairs(300, 2), block: Array.from({ length: 300 }, (_, at) => `g${at % 4}`), draws: 10_000 },
    id: "permutation",
  },
  {
    step: "ols_100000",
    name: "least squares with influence, 100,000 rows",
    most: 50,
    inputs: pairs(100_000, 3),
    id: "influence",
  },
];

type Rounds = { readonly best: number; readonly note: string };

/** The least of some rounds, warm; the note says so, and what the first of them took. */
async function rounds(work: () => unknown, count: number): Promise<Rounds> {
  const first = await timeOf(work);
  let best = first;
  for (let round = 1; round < count; round++) best = Math.min(best, await timeOf(work));
  return { best, note: `least of ${count} rounds, R of 5; the first took ${first.toPrecision(3)} ms` };
}

/** One line a step: ours over R's. An aim in milliseconds is kept or not whatever R takes. */
export async function methodsBesideR(): Promise<readonly BenchLine[]> {
  const inR = stepsInR();
  if (!inR) return [];
  const baseline = `R ${inR.version}, this run`;
  const tops = topsFromCsv(TABLE);
  const lines: BenchLine[] = [];
  for (const { step, name, id, most, inputs } of aimed()) {
    const { best: ours, note } = await rounds(() => run(id, inputs), 15);
    const theirs = inR.steps[step] ?? Number.NaN;
    const words = Number.isFinite(most) ? `at most ${most} ms, faster than R` : "faster than R";
    lines.push({ name, baseline, ours, theirs, aim: { words, within: ours <= most && ours < theirs }, note });
  }
  for (const [step, work] of Object.entries(notebookSteps)) {
    const theirs = inR.steps[step];
    if (theirs === undefined) continue;
    const { best: ours, note } = await rounds(() => work(tops), 15);
    lines.push({ name: `${step}, 300 tops`, baseline, ours, theirs, aim: null, note });
  }
  return lines;
}
