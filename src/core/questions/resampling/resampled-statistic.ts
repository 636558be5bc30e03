// What is resampled: a figure from sums over the records drawn, which cost nothing to add up and to leave one out of, or from their values in order.
import { median } from "../../numerics/index.ts";

/** Sums over records drawn: how many, x, y, xx, xy, yy (x and y less their means); 6 numbers a unit. */
export const SUMS = 6;

/** A figure from sums at `at` of a list. NaN where the records drawn do not have it (no spread of x). */
export type FromSums = (sums: Float64Array, at: number) => number;
export type FromValues = (values: Float64Array) => number;

export type ResampledStatistic = {
  readonly needsY: boolean;
  readonly meaning: string;
  /** "x" where the figure comes without the centre that was taken from x before summing. */
  readonly shift: "x" | "none";
} & ({ readonly fromSums: FromSums } | { readonly fromValues: FromValues });

const sumOf = (sums: Float64Array, at: number) => sums[at] as number;
const spread = (n: number, s: number, ss: number) => {
  const left = ss - (s * s) / n;
  return left > 1e-12 * ss ? left : 0;
};
const xx: FromSums = (sums, at) => spread(sumOf(sums, at), sumOf(sums, at + 1), sumOf(sums, at + 3));
const yy: FromSums = (sums, at) => spread(sumOf(sums, at), sumOf(sums, at + 2), sumOf(sums, at + 5));
const xy: FromSums = (sums, at) => sumOf(sums, at + 4) - (sumOf(sums, at + 1) * sumOf(sums, at + 2)) / sumOf(sums, at);
const over = (a: number, b: number) => (b > 0 ? a / b : Number.NaN);

/** Mean of the middle of sorted values, a tenth left out at either end. */
function trimmedMean(values: Float64Array): number {
  const cut = Math.floor(values.length / 10);
  const kept = values
    .slice()
    .sort()
    .subarray(cut, values.length - cut);
  return kept.reduce((sum, value) => sum + value, 0) / kept.length;
}

/** By the name that a run gives. */
export const resampledStatistics = {
  mean: { needsY: false, shift: "x", meaning: "mean of x", fromSums: (s, at) => sumOf(s, at + 1) / sumOf(s, at) },
  sd: {
    needsY: false,
    shift: "none",
    meaning: "standard deviation of x",
    fromSums: (s, at) => Math.sqrt(xx(s, at) / (sumOf(s, at) - 1)),
  },
  median: { needsY: false, shift: "none", meaning: "median of x", fromValues: (values) => median(values) },
  "trimmed-mean": {
    needsY: false,
    shift: "none",
    meaning: "mean of x, a tenth left out at either end",
    fromValues: trimmedMean,
  },
  slope: { needsY: true, shift: "none", meaning: "slope of y on x", fromSums: (s, at) => over(xy(s, at), xx(s, at)) },
  correlation: {
    needsY: true,
    shift: "none",
    meaning: "correlation of x and y",
    fromSums: (s, at) => over(xy(s, at), Math.sqrt(xx(s, at) * yy(s, at))),
  },
} as const satisfies Readonly<Record<string, ResampledStatistic>>;

export type StatisticName = keyof typeof resampledStatistics;
export const resampledStatistic = (name: StatisticName): ResampledStatistic => resampledStatistics[name];
