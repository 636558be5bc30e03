import { declined, type Method, type Outcome, succeeded } from "../../base/index.ts";
import { betaQuantile, betaUpperQuantile, normalQuantile } from "../../numerics/index.ts";
import { levelFrom, levelInput } from "../inputs/level-input.ts";

export type ProportionInterval = { readonly estimate: number; readonly low: number; readonly high: number };

/**
 * Wilson's score interval for how often a rule held: held `k` of `n` times.
 *
 *   centre = (p + z²/2n) / (1 + z²/n),   half-width = z sqrt(p(1 − p)/n + z²/4n²) / (1 + z²/n),   p = k/n
 *
 * `k` whole, 0 ≤ k ≤ n; `n` ≥ 1; `level` between 0 and 1. Both ends lie in [0, 1]. Without continuity correction.
 * Source: Wilson (1927), J. Am. Stat. Assoc. 22, 209–212; recommended for small n by Brown, Cai and DasGupta (2001), Stat. Sci. 16.
 */
export function wilsonInterval(k: number, n: number, level: number): ProportionInterval {
  const z = normalQuantile(0.5 + level / 2);
  const p = k / n;
  const stretch = 1 + (z * z) / n;
  const centre = (p + (z * z) / (2 * n)) / stretch;
  const half = (z * Math.sqrt((p * (1 - p)) / n + (z * z) / (4 * n * n))) / stretch;
  return { estimate: p, low: k === 0 ? 0 : centre - half, high: k === n ? 1 : centre + half };
}

/**
 * The exact interval of Clopper and Pearson: quantiles of beta distributions; never covers less than `level`.
 * Same arguments as `wilsonInterval`. Source: Clopper and Pearson (1934), Biometrika 26, 404–413.
 */
export function clopperPearsonInterval(k: number, n: number, level: number): ProportionInterval {
  const tail = (1 - level) / 2;
  return {
    estimate: k / n,
    low: k === 0 ? 0 : betaQuantile(tail, k, n - k + 1),
    high: k === n ? 1 : betaUpperQuantile(tail, k + 1, n - k),
  };
}

/** The interval of Jeffreys' prior, 0 at k = 0 and 1 at k = n. Source: Brown, Cai and DasGupta (2001), Stat. Sci. 16, 101–133. */
export function jeffreysInterval(k: number, n: number, level: number): ProportionInterval {
  const tail = (1 - level) / 2;
  return {
    estimate: k / n,
    low: k === 0 ? 0 : betaQuantile(tail, k + 0.5, n - k + 0.5),
    high: k === n ? 1 : betaUpperQuantile(tail, k + 0.5, n - k + 0.5),
  };
}

/** Pairs of counts; null for one that is missing. */
type Pair = { readonly k: number; readonly n: number } | null;

const listOf = (value: unknown): readonly unknown[] =>
  Array.isArray(value) ? value : value instanceof Float64Array ? [...value] : [value];
const isMissing = (value: unknown): boolean => value === null || (typeof value === "number" && Number.isNaN(value));
const isWhole = (value: unknown): value is number => typeof value === "number" && Number.isSafeInteger(value);

/** One `k` and `n` or a list of each; in lists either may be missing, and keeps its place. */
function pairsFrom(k: unknown, n: unknown): Outcome<readonly Pair[]> {
  const [ks, ns] = [listOf(k), listOf(n)];
  if (ks.length === 0 || ks.length !== ns.length)
    return declined("out-of-domain", { name: "k", needed: "one count of successes for each number of trials" });
  const pairs: Pair[] = [];
  for (const [at, held] of ks.entries()) {
    const tried = ns[at];
    if (isMissing(held) || isMissing(tried)) pairs.push(null);
    else if (!isWhole(tried) || tried < 0)
      return declined("out-of-domain", { name: "n", needed: "a whole number from 1 up" });
    else if (tried === 0) return declined("too-few-records", { have: 0, need: 1 });
    else if (!isWhole(held) || held < 0 || held > tried)
      return declined("out-of-domain", { name: "k", needed: "a whole number from 0 to n" });
    else pairs.push({ k: held, n: tried });
  }
  return pairs.every((pair) => pair === null) ? declined("too-few-records", { have: 0, need: 1 }) : succeeded(pairs);
}

export const proportionInterval = {
  id: "proportion-interval",
  name: "How often a rule held, with its interval",
  answers: "verdict",
  needs: { rows: 1 },
  inputs: {
    k: {
      kind: "quantities",
      dimension: "1",
      atMost: 1e12,
      meaning: "times it held; a number or a list, null where missing",
    },
    n: { kind: "quantities", dimension: "1", atMost: 1e12, meaning: "times it was tried; a number or a list" },
    level: levelInput,
  },
  fields: {
    estimate: { meaning: "share held" },
    wilson_low: { meaning: "lower end, Wilson" },
    wilson_high: { meaning: "upper end, Wilson" },
    clopper_pearson_low: { meaning: "lower end, exact" },
    clopper_pearson_high: { meaning: "upper end, exact" },
    jeffreys_low: { meaning: "lower end, Jeffreys" },
    jeffreys_high: { meaning: "upper end, Jeffreys" },
  },
  source: {
    citation: "Wilson (1927), J. Am. Stat. Assoc. 22, 209–212; Brown, Cai and DasGupta (2001), Stat. Sci. 16, 101–133",
    basis: "published",
  },
  run: (inputs) => {
    const level = levelFrom(inputs);
    if (!level.ok) return level;
    const pairs = pairsFrom(inputs.k, inputs.n);
    if (!pairs.ok) return pairs;
    const each = (interval: typeof wilsonInterval, end: keyof ProportionInterval) => {
      const values = pairs.value.map((pair) => (pair ? interval(pair.k, pair.n, level.value)[end] : null));
      return typeof inputs.k === "number" ? values[0] : values;
    };
    return succeeded({
      estimate: each(wilsonInterval, "estimate"),
      wilson_low: each(wilsonInterval, "low"),
      wilson_high: each(wilsonInterval, "high"),
      clopper_pearson_low: each(clopperPearsonInterval, "low"),
      clopper_pearson_high: each(clopperPearsonInterval, "high"),
      jeffreys_low: each(jeffreysInterval, "low"),
      jeffreys_high: each(jeffreysInterval, "high"),
    });
  },
} as const satisfies Method;
