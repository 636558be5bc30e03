/** `spread`: standard deviation, NaN of fewer than two; `standardError`: of the mean by the spread alone, 0 of fewer than two. */
export type ReadingsMean = {
  readonly count: number;
  readonly mean: number;
  readonly spread: number;
  readonly standardError: number;
};

/**
 * Mean of repeated readings of one thing, how far they scatter, and what that leaves unsure of the mean. mean = sum x / n, spread = sqrt(sum (x - mean)^2 / (n - 1)),
 * standard error = spread / sqrt(n). values: in one unit, NaN where a reading is missing; those are left out. The order does not matter to the last
 * bit, and equal readings have exactly their value as mean and no spread. None: mean NaN. Source: JCGM 100:2008 (GUM), 4.2.1 to 4.2.3.
 * @example meanOfReadings([2, 4]) -> { count: 2, mean: 3, spread: 1.4142135623730951, standardError: 1 }
 */
export function meanOfReadings(values: Iterable<number> & ArrayLike<number>): ReadingsMean {
  const given = Float64Array.from(values)
    .filter((value) => !Number.isNaN(value))
    .sort();
  const count = given.length;
  const [least = Number.NaN] = given;
  const mean = least + given.reduce((sum, value) => sum + (value - least), 0) / count;
  if (count < 2) return { count, mean, spread: Number.NaN, standardError: 0 };
  const spread = Math.sqrt(given.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (count - 1));
  return { count, mean, spread, standardError: spread / Math.sqrt(count) };
}
