import { compensatedSum } from "./compensated-sum.ts";

/**
 * Sum of squared deviations from the mean, two passes with the correction for the rounded mean:
 * sum(d^2) - (sum d)^2 / n, d = (x - first) - mean(x - first). x: at least one finite number; 0 for one.
 * Source: Chan, Golub, LeVeque (1983), The American Statistician 37, eq. 1.7.
 */
export function sumOfSquares(x: ArrayLike<number>): number {
  const n = x.length;
  const first = x[0] ?? 0;
  const d = new Float64Array(n);
  for (let i = 0; i < n; i++) d[i] = (x[i] as number) - first;
  const centre = compensatedSum(d) / n;
  const squares = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    d[i] = (d[i] as number) - centre;
    squares[i] = (d[i] as number) ** 2;
  }
  return Math.max(0, compensatedSum(squares) - compensatedSum(d) ** 2 / n);
}
