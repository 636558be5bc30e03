/**
 * What the curvature of a model adds to its result: the shift of the mean, tr(H V) / 2, and the variance, tr((H V)^2) / 2, of the second-order
 * expansion under normal inputs. They say how far to trust the first order: both are 0 for a linear model.
 * hessian, covariance: n x n, row by row; second derivatives at the estimates. Result: in the unit of the result, and in its square (>= 0).
 * Third derivatives (the second part of the note's formula) are not looked at: it is a check of curvature, not a correction.
 * Source: JCGM 100:2008, 5.1.2 note, first part, written for correlated inputs; A. M. Mathai and S. B. Provost (1992), Quadratic Forms in Random Variables.
 * @example secondOrderTerm([2], [9]) // { shift: 9, variance: 162 }: x squared, u = 3
 */
export function secondOrderTerm(
  hessian: ArrayLike<number>,
  covariance: ArrayLike<number>,
): { readonly shift: number; readonly variance: number } {
  const n = Math.round(Math.sqrt(hessian.length));
  const product = new Float64Array(n * n);
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++) {
      let sum = 0;
      for (let k = 0; k < n; k++) sum += (hessian[i * n + k] as number) * (covariance[k * n + j] as number);
      product[i * n + j] = sum;
    }
  let [trace, square] = [0, 0];
  for (let i = 0; i < n; i++) {
    trace += product[i * n + i] as number;
    for (let k = 0; k < n; k++) square += (product[i * n + k] as number) * (product[k * n + i] as number);
  }
  return { shift: trace / 2, variance: Math.max(0, square / 2) };
}
