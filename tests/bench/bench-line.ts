// A line of the benchmark: our time over a baseline's, both measured in turns in this run, the best of each.

export type BenchLine = {
  readonly name: string;
  readonly baseline: string;
  readonly ours: number;
  readonly theirs: number;
  /** What is aimed at, and whether this run kept within it; null where no aim is set. */
  readonly aim: { readonly words: string; readonly within: boolean } | null;
  /** More that the run showed, for people. */
  readonly note?: string;
};

type Parts = {
  readonly name: string;
  readonly baseline: string;
  readonly ours: () => unknown;
  readonly theirs: () => unknown;
  /** Largest ratio aimed at. */
  readonly atMost?: number;
  readonly rounds?: number;
  /** How often the baseline runs within one measurement: one that is over too soon for the clock is repeated. */
  readonly repeated?: number;
  readonly note?: string;
};

/** Milliseconds of one piece of work. */
export async function timeOf(work: () => unknown): Promise<number> {
  const before = performance.now();
  await work();
  return performance.now() - before;
}

/** Measures in turns, so that a busy moment falls on both. */
export async function benchLine(parts: Parts): Promise<BenchLine> {
  const { name, baseline, ours, theirs, atMost, rounds = 15, repeated = 1, note } = parts;
  let [best, base] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (let round = 0; round < rounds; round++) {
    const all = await timeOf(async () => {
      for (let time = 0; time < repeated; time++) await theirs();
    });
    base = Math.min(base, all / repeated);
    best = Math.min(best, await timeOf(ours));
  }
  const aim = atMost === undefined ? null : { words: `at most ${atMost} x`, within: best / base <= atMost };
  return { name, baseline, ours: best, theirs: base, aim, ...(note === undefined ? {} : { note }) };
}
