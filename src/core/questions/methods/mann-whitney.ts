import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { median, midranks, normalQuantile, normalUpperTail } from "../../numerics/index.ts";
import { levelFrom, levelInput } from "./level-input.ts";
import { rankSumLaw } from "./rank-sum-law.ts";
import { twoSamples } from "./two-samples.ts";

/** The exact law is counted up to this many records; the differences of pairs are listed up to this many. */
const MOST_EXACT = 100;
const MOST_PAIRS = 4_000_000;

/** Sum of (t^3 - t) over groups of equal values. */
function tieTerm(sorted: Float64Array): number {
  let [term, run] = [0, 1];
  for (let i = 1; i <= sorted.length; i++) {
    if (sorted[i] === sorted[i - 1]) run++;
    else {
      term += run ** 3 - run;
      run = 1;
    }
  }
  return term;
}

type Exact = { readonly p: number; readonly law: Float64Array; readonly all: number };

/** Exact two-sided p: twice the smaller tail without ties, rank sums at least as far from their mean with them. `sum`: doubled rank sum of a. */
function exactP(ranks: Int32Array, size: number, sum: number, hasTies: boolean): Exact {
  const law = rankSumLaw(ranks, size);
  const all = law.reduce((total, count) => total + count, 0);
  const centre = (size * ranks.reduce((total, rank) => total + rank, 0)) / ranks.length;
  let [far, low, high] = [0, 0, 0];
  for (let s = 0; s < law.length; s++) {
    const count = law[s] as number;
    if (Math.abs(s - centre) >= Math.abs(sum - centre) - 1e-9) far += count;
    if (s <= sum) low += count;
    if (s >= sum) high += count;
  }
  return { p: Math.min(1, hasTies ? far / all : (2 * Math.min(low, high)) / all), law, all };
}

/** How many of the smallest (and largest) differences to leave out for this level, and the level that is then kept. Without ties only. */
function leftOut(n: number, { law, all }: Exact, level: number): { readonly out: number; readonly kept: number } {
  const lowest = n * (n + 1); // doubled rank sum when a holds the lowest ranks: U = 0
  let [below, u] = [0, 0];
  const tail = (1 - level) / 2;
  while ((below + (law[lowest + 2 * u] as number)) / all < tail) below += law[lowest + 2 * u++] as number;
  if (u === 0) [below, u] = [law[lowest] as number, 1];
  return { out: u, kept: 1 - (2 * below) / all };
}

/** Two groups by ranks: how far one is shifted against the other, whatever the shape of their scatter. */
export const mannWhitney: Method = {
  id: "mann-whitney",
  name: "Mann and Whitney's comparison by ranks",
  answers: "comparison",
  needs: { rows: 3, groups: 2 },
  inputs: {
    a: { kind: "quantities", meaning: "values or grades (as numbers) of the first group" },
    b: { kind: "quantities", meaning: "values or grades of the second group" },
    level: levelInput,
  },
  fields: {
    U: { meaning: "pairs with a above b, ties counted half" },
    prob_superiority: { meaning: "U over all pairs" },
    hodges_lehmann: { meaning: "median of all differences a - b: the shift" },
    p: { meaning: "two-sided p to take: exact where it is given" },
    p_exact: { meaning: `exact two-sided p, up to ${MOST_EXACT} records` },
    p_normal: { meaning: "p by the normal law, variance corrected for ties, no continuity correction" },
    p_normal_continuity: { meaning: "the same with continuity correction" },
    ci95_low: { meaning: "exact interval of the shift, lower; absent with ties" },
    ci95_high: { meaning: "upper" },
    actual_level: { meaning: "level that this interval keeps" },
    set_aside: { meaning: "records without a value" },
    chosen: { meaning: "which p is taken, and why" },
  },
  source: {
    citation: "Mann and Whitney (1947), Ann. Math. Stat. 18, 50-60; Hodges and Lehmann (1963), ibid. 34, 598-611",
    basis: "published",
  },
  run: (inputs) => {
    const [samples, level] = [twoSamples(inputs, 1), levelFrom(inputs)];
    if (!samples.ok) return samples;
    if (!level.ok) return level;
    const { a, b, setAside } = samples.value;
    const [n, m, all] = [a.length, b.length, a.length + b.length];
    if (all < 3) return declined("too-few-records", { have: all, need: 3 });
    const values = Float64Array.from([...a, ...b]);
    const ranks = midranks(values);
    const sum = ranks.subarray(0, n).reduce((total, rank) => total + rank, 0);
    const U = sum - (n * (n + 1)) / 2;
    const ties = tieTerm(values.slice().sort());
    const variance = ((n * m) / 12) * (all + 1 - ties / (all * (all - 1)));
    if (!(variance > 0)) return declined("no-spread", { column: "values" });
    const off = Math.abs(U - (n * m) / 2);
    const twoTails = (distance: number) =>
      Math.min(1, 2 * normalUpperTail(Math.max(0, distance) / Math.sqrt(variance)));
    const isExact = all <= MOST_EXACT;
    const doubled = Int32Array.from(ranks, (rank) => Math.round(2 * rank));
    const exact = isExact ? exactP(doubled, n, Math.round(2 * sum), ties > 0) : null;
    const differences = n * m <= MOST_PAIRS ? new Float64Array(n * m) : null;
    if (differences) {
      for (let i = 0; i < n; i++)
        for (let j = 0; j < m; j++) differences[i * m + j] = (a[i] as number) - (b[j] as number);
      differences.sort();
    }
    const out = exact && ties === 0 ? leftOut(n, exact, level.value) : null;
    const limits =
      differences && exact && ties === 0 && out
        ? { ci95_low: differences[out.out - 1], ci95_high: differences[n * m - out.out], actual_level: out.kept }
        : differences && !exact && ties === 0
          ? normalLimits(differences, variance, n * m, level.value)
          : { ci95_low: null, ci95_high: null, actual_level: null };
    const normal = twoTails(off);
    return succeeded({
      U,
      prob_superiority: U / (n * m),
      hodges_lehmann: differences ? median(differences) : null,
      p: exact?.p ?? normal,
      p_exact: exact?.p ?? null,
      p_normal: normal,
      p_normal_continuity: twoTails(off - 0.5),
      ...limits,
      set_aside: setAside,
      chosen: exact
        ? `exact p${ties > 0 ? ", ties counted" : ""}: ${all} records`
        : `p by the normal law: more than ${MOST_EXACT} records`,
    });
  },
};

/** Limits of the shift by the normal law, for many records without ties. */
function normalLimits(differences: Float64Array, variance: number, pairs: number, level: number) {
  const out = Math.max(1, Math.round(pairs / 2 - normalQuantile((1 + level) / 2) * Math.sqrt(variance)));
  return { ci95_low: differences[out - 1], ci95_high: differences[pairs - out], actual_level: level };
}
