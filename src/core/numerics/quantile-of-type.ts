/** The ways of Hyndman and Fan that go on a straight line between order statistics: h = (n + 1) p, (n - 1) p + 1, (n + 1/3) p + 1/3. */
export type QuantileType = 6 | 7 | 8;

const place = (n: number, p: number, type: QuantileType): number =>
  type === 6 ? (n + 1) * p : type === 7 ? (n - 1) * p + 1 : (n + 1 / 3) * p + 1 / 3;

/**
 * Sample quantile of type 6 (Weibull), 7 (the usual default) or 8 (nearly median-unbiased): the order statistic at place h, counted from 1,
 * and a straight line between two. sorted: finite numbers, ascending, at least one; p in [0, 1]. Result in the unit of the numbers, never
 * outside them; NaN for none. A place within 4 ulp of a whole number is that number.
 * Source: R. J. Hyndman, Y. Fan (1996), The American Statistician 50, 361-365, definitions 6 to 8.
 * @example quantileOfType([1, 2, 3, 4], 0.25, 6) // 1.25
 */
export function quantileOfType(sorted: ArrayLike<number>, p: number, type: QuantileType): number {
  const n = sorted.length;
  const h = place(n, p, type);
  const whole = Math.floor(h + 4 * Number.EPSILON * Math.max(1, h));
  const share = h - whole < 4 * Number.EPSILON * Math.max(1, h) ? 0 : h - whole;
  const at = (k: number): number => sorted[Math.min(n, Math.max(1, k)) - 1] ?? Number.NaN;
  return share === 0 ? at(whole) : (1 - share) * at(whole) + share * at(whole + 1);
}
