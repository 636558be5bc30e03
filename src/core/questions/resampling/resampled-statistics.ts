// What is resampled: a figure from sums over the records drawn, which cost nothing to leave one out of, or from their values in rising order.

/** Sums over records drawn: how many, x, y, xx, xy, yy (x and y less their means); 6 numbers a unit. */
export const SUMS = 6;

/** A figure from six sums. NaN where the records drawn do not have it (no spread of x). */
export type FromSums = (sums: Float64Array) => number;
/** A figure from values in rising order and how often each was drawn; `trim`: the share that is left out at either end. */
export type FromValues = (values: Float64Array, counts: Int32Array, trim: number) => number;

export type ResampledStatistic = {
  readonly meaning: string;
  /** What the figure is taken of. */
  readonly of: "x" | "x-and-y" | "two-groups";
  /** Whether adding to x adds as much to the figure: then x may be centred first. */
  readonly moves: boolean;
} & ({ readonly fromSums: FromSums } | { readonly fromValues: FromValues });

const sumOf = (sums: Float64Array, at: number) => sums[at] as number;
/** Sum of squares about the mean; zero where only rounding is left, for x and y are centred. */
function about(n: number, sum: number, square: number): number {
  const left = square - (sum * sum) / n;
  return left > 1e-12 * square ? left : 0;
}
const xx: FromSums = (sums) => about(sumOf(sums, 0), sumOf(sums, 1), sumOf(sums, 3));
const yy: FromSums = (sums) => about(sumOf(sums, 0), sumOf(sums, 2), sumOf(sums, 5));
const xy: FromSums = (sums) => sumOf(sums, 4) - (sumOf(sums, 1) * sumOf(sums, 2)) / sumOf(sums, 0);
const over = (a: number, b: number) => (b > 0 ? a / b : Number.NaN);
const slope: FromSums = (sums) => over(xy(sums), xx(sums));

/** Mean of the values at places first + 1 to last of those drawn, in rising order. */
function middleMean(values: Float64Array, counts: Int32Array, first: number, last: number): number {
  let [before, sum] = [0, 0];
  for (let at = 0; at < values.length && before < last; at++) {
    const after = before + (counts[at] as number);
    const taken = Math.min(last, after) - Math.max(first, before);
    if (taken > 0) sum += taken * (values[at] as number);
    before = after;
  }
  return sum / (last - first);
}
function drawnOf(counts: Int32Array): number {
  let all = 0;
  for (let at = 0; at < counts.length; at++) all += counts[at] as number;
  return all;
}
const median: FromValues = (values, counts) => {
  const all = drawnOf(counts);
  return middleMean(values, counts, Math.ceil(all / 2) - 1, Math.floor(all / 2) + 1);
};
const trimmedMean: FromValues = (values, counts, trim) => {
  const all = drawnOf(counts);
  const cut = Math.floor(all * trim + 1e-9);
  return middleMean(values, counts, cut, all - cut);
};

/** By the name that a run gives. */
export const resampledStatistics = {
  mean: { of: "x", moves: true, meaning: "mean of x", fromSums: (sums) => sumOf(sums, 1) / sumOf(sums, 0) },
  median: { of: "x", moves: true, meaning: "median of x", fromValues: median },
  "trimmed-mean": { of: "x", moves: true, meaning: "mean of x without its ends", fromValues: trimmedMean },
  sd: {
    of: "x",
    moves: false,
    meaning: "standard deviation of x",
    fromSums: (sums) => (sumOf(sums, 0) > 1 ? Math.sqrt(xx(sums) / (sumOf(sums, 0) - 1)) : Number.NaN),
  },
  slope: { of: "x-and-y", moves: false, meaning: "slope of y on x", fromSums: slope },
  correlation: {
    of: "x-and-y",
    moves: false,
    meaning: "correlation of x and y",
    fromSums: (sums) => over(xy(sums), Math.sqrt(xx(sums) * yy(sums))),
  },
  // The slope on a column that is 1 in a and 0 in b.
  "difference-of-means": { of: "two-groups", moves: false, meaning: "mean of a less mean of b", fromSums: slope },
} as const satisfies Readonly<Record<string, ResampledStatistic>>;
