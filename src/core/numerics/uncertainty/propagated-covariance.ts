import { compensatedSum } from "../compensated-sum.ts";

/**
 * Covariance of several results of the same inputs: U = C V C'. Results that share inputs are correlated even where the inputs are not.
 * sensitivities: one list of n a result (a row of C); covariance: V, n x n, row by row. Result: m x m, row by row.
 * Source: JCGM 102:2011, 6.2.1.3; JCGM 100:2008, H.2.3.
 * @example propagatedCovariance([[1, 1], [1, -1]], [1, 0, 0, 4]) // [5, -3, -3, 5]
 */
export function propagatedCovariance(
  sensitivities: readonly ArrayLike<number>[],
  covariance: ArrayLike<number>,
): Float64Array {
  const [m, n] = [sensitivities.length, sensitivities[0]?.length ?? 0];
  const result = new Float64Array(m * m);
  for (const [a, first] of sensitivities.entries())
    for (const [b, second] of sensitivities.entries()) {
      const terms: number[] = [];
      for (let i = 0; i < n; i++)
        for (let j = 0; j < n; j++)
          terms.push((first[i] as number) * (covariance[i * n + j] as number) * (second[j] as number));
      result[a * m + b] = compensatedSum(terms);
    }
  return result;
}
