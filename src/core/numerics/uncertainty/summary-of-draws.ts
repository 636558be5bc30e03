import { mean } from "../mean.ts";
import { standardDeviation } from "../standard-deviation.ts";

/** Quantile of type 7 of numbers that are sorted already. */
function sortedQuantile(sorted: Float64Array, p: number): number {
  const h = (sorted.length - 1) * p;
  const below = sorted[Math.floor(h)] as number;
  return below + (h - Math.floor(h)) * ((sorted[Math.ceil(h)] as number) - below);
}

export type DrawsSummary = {
  readonly mean: number;
  readonly standard: number;
  readonly median: number;
  readonly low: number;
  readonly high: number;
  readonly shortestLow: number;
  readonly shortestHigh: number;
};

/**
 * What a million values of a model say: mean, standard deviation, median, the interval that leaves as much out on either side, and the shortest
 * interval. values: n >= 2, finite, sorted in place; level in (0, 1). Source: JCGM 101:2008, 7.6 and 7.7.
 */
export function summaryOfDraws(values: Float64Array, level: number): DrawsSummary {
  values.sort();
  const n = values.length;
  const inside = Math.min(n - 1, Math.max(1, Math.round(level * n)));
  let best = 0;
  for (let r = 1; r + inside < n; r++)
    if (
      (values[r + inside] as number) - (values[r] as number) <
      (values[best + inside] as number) - (values[best] as number)
    )
      best = r;
  return {
    mean: mean(values),
    standard: standardDeviation(values),
    median: sortedQuantile(values, 0.5),
    low: sortedQuantile(values, (1 - level) / 2),
    high: sortedQuantile(values, (1 + level) / 2),
    shortestLow: values[best] as number,
    shortestHigh: values[best + inside] as number,
  };
}
