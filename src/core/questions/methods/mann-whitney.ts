import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import {
  midranks,
  normalQuantile,
  normalUpperTail,
  pairDifferenceOfRank,
  rankSumDistribution,
} from "../../numerics/index.ts";
import { type Alternative, alternativeFrom, alternativeInput } from "../counts/alternative-input.ts";
import { levelFrom, levelInput } from "../inputs/level-input.ts";
import { twoSamples } from "../inputs/two-samples.ts";

/** The exact law is counted up to this many records without ties, and up to this many with them. */
const MOST_EXACT = 200;
const MOST_EXACT_TIED = 100;

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

type Law = ReturnType<typeof rankSumDistribution>;

/** Exact p by the law of the sum of (doubled) ranks: the named tail, or sums at least as far from their mean. Without ties that is twice the smaller tail. */
function exactP({ least, shares }: Law, sum: number, centre: number, alternative: Alternative): number {
  let p = 0;
  for (let at = 0; at < shares.length; at++) {
    const other = least + at;
    const isAsFar =
      alternative === "greater"
        ? other >= sum
        : alternative === "less"
          ? other <= sum
          : Math.abs(2 * other - 2 * centre) >= Math.abs(2 * sum - 2 * centre) - 1e-6;
    if (isAsFar) p += shares[at] as number;
  }
  return Math.min(1, p);
}

/** p by the normal law; off: U less its mean, less the continuity correction towards it. */
function normalP(off: number, correction: number, deviation: number, alternative: Alternative): number {
  if (alternative === "greater") return normalUpperTail((off - correction) / deviation);
  if (alternative === "less") return normalUpperTail((-off - correction) / deviation);
  return Math.min(1, 2 * normalUpperTail(Math.max(0, Math.abs(off) - correction) / deviation));
}

/** How many differences of pairs to leave out at either end without ties, by the law of U, and the level that is then kept. */
function leftOut({ shares }: Law, level: number): { readonly out: number; readonly kept: number } {
  const tail = (1 - level) / 2;
  let [below, u] = [0, 0];
  // A tail that is met but for rounding is met.
  while (below + (shares[u] as number) < tail * (1 - 1e-12)) below += shares[u++] as number;
  return u === 0 ? { out: 1, kept: 1 - 2 * (shares[0] as number) } : { out: u, kept: 1 - 2 * below };
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
    alternative: alternativeInput,
  },
  fields: {
    U: { meaning: "pairs with a above b, ties counted half" },
    prob_superiority: { meaning: "U over all pairs" },
    hodges_lehmann: { meaning: "median of all differences a - b: the shift" },
    p: { meaning: "p to take: exact where it is given" },
    p_exact: {
      meaning: `exact p, up to ${MOST_EXACT} records, with ties ${MOST_EXACT_TIED}; with ties two-sided means sums of ranks as far from their mean`,
    },
    p_normal: { meaning: "p by the normal law, variance corrected for ties, no continuity correction" },
    p_normal_continuity: { meaning: "the same with continuity correction" },
    ci95_low: { meaning: "two-sided interval of the shift, lower; exact where p is, absent with ties" },
    ci95_high: { meaning: "upper" },
    actual_level: { meaning: "level that this interval keeps; absent where it is not exact" },
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
    const alternative = alternativeFrom(inputs);
    const [a, b] = [samples.value.a.slice().sort(), samples.value.b.slice().sort()];
    const [n, m, all] = [a.length, b.length, a.length + b.length];
    if (all < 3) return declined("too-few-records", { have: all, need: 3 });
    const ranks = midranks(Float64Array.from([...a, ...b]));
    const sum = ranks.subarray(0, n).reduce((total, rank) => total + rank, 0);
    const U = sum - (n * (n + 1)) / 2;
    const ties = tieTerm(ranks.slice().sort());
    const deviation = Math.sqrt(((n * m) / 12) * (all + 1 - ties / (all * (all - 1))));
    if (!(deviation > 0)) return declined("no-spread", { column: "values" });
    const difference = (rank: number) => pairDifferenceOfRank(a, b, rank);
    if (!Number.isFinite(difference(1)) || !Number.isFinite(difference(n * m)))
      return declined("not-finite", { name: "the difference" });
    const isTied = ties > 0;
    const isExact = all <= (isTied ? MOST_EXACT_TIED : MOST_EXACT);
    const times = isTied ? 2 : 1;
    const law = isExact
      ? rankSumDistribution(
          ranks.map((rank) => times * rank),
          n,
        )
      : null;
    const exact = law ? exactP(law, times * sum, (times * n * (all + 1)) / 2, alternative) : null;
    const off = U - (n * m) / 2;
    const normal = normalP(off, 0, deviation, alternative);
    const limits = law && !isTied ? leftOut(law, level.value) : null;
    const byNormal = Math.round((n * m) / 2 - normalQuantile((1 + level.value) / 2) * deviation);
    const out = isTied ? null : (limits?.out ?? Math.max(1, byNormal));
    const middle = (n * m + 1) / 2;
    return succeeded({
      U,
      prob_superiority: U / (n * m),
      hodges_lehmann: difference(Math.floor(middle)) / 2 + difference(Math.ceil(middle)) / 2,
      p: exact ?? normal,
      p_exact: exact,
      p_normal: normal,
      p_normal_continuity: normalP(off, 0.5, deviation, alternative),
      ci95_low: out === null ? null : difference(out),
      ci95_high: out === null ? null : difference(n * m + 1 - out),
      actual_level: limits?.kept ?? null,
      set_aside: samples.value.setAside,
      chosen:
        exact === null
          ? "p by the normal law, for there are many records"
          : `exact p${isTied ? ", ties counted" : ""}, for there are few records`,
    });
  },
};
