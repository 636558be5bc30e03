/**
 * Sample quantile of type 7: linear between order statistics, h = (n - 1) p. x: at least one finite number, any order, left as it is;
 * p in [0, 1]. Result in the unit of x; NaN for no numbers.
 * Source: R. J. Hyndman, Y. Fan (1996), The American Statistician 50, 361-365, definition 7.
 * @example quantile([1, 2, 3, 4], 0.25) // 1.75
 */
export function quantile(x: ArrayLike<number>, p: number): number {
  const sorted = Float64Array.from(x).sort();
  const h = (sorted.length - 1) * p;
  const below = sorted[Math.floor(h)] ?? Number.NaN;
  const above = sorted[Math.ceil(h)] ?? Number.NaN;
  return below + (h - Math.floor(h)) * (above - below);
}
