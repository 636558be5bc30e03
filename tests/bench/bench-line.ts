// A line of the benchmark: our time over a baseline's, both measured in turns in this run, the best of each.

export type BenchLine = {
  readonly name: string;
  readonly baseline: string;
  readonly ratio: number;
  readonly ours: number;
  readonly theirs: number;
  readonly aim: string;
};

type Parts = {
  readonly name: string;
  readonly baseline: string;
  readonly aim: string;
  readonly ours: () => unknown;
  readonly theirs: () => unknown;
  readonly rounds?: number;
};

async function once(work: () => unknown): Promise<number> {
  const before = performance.now();
  await work();
  return performance.now() - before;
}

/** Measures in turns, so that a busy moment falls on both. */
export async function benchLine({ name, baseline, aim, ours, theirs, rounds = 15 }: Parts): Promise<BenchLine> {
  let [best, base] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (let round = 0; round < rounds; round++) {
    base = Math.min(base, await once(theirs));
    best = Math.min(best, await once(ours));
  }
  return { name, baseline, aim, ours: best, theirs: base, ratio: best / base };
}
