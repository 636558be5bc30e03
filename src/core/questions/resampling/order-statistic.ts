/** The smallest value with at least a share p of the sorted values at or below it: the inverse of their distribution function (type 1). p in [0, 1]. */
export function orderStatistic(sorted: Float64Array, p: number): number {
  const place = Math.ceil(p * sorted.length * (1 - 4 * Number.EPSILON));
  return sorted[Math.min(sorted.length, Math.max(1, place)) - 1] ?? Number.NaN;
}
