/** Two inputs whose errors go together: their places in the list, and the coefficient from -1 to 1. */
export type Correlated = { readonly first: number; readonly second: number; readonly coefficient: number };

/**
 * Covariance matrix of inputs: V_ij = u_i u_j r_ij, row by row.
 * uncertainties: n standard uncertainties, >= 0; correlated: pairs that are not independent, each pair once. Result: n x n, symmetric.
 * It need not be positive: ask choleskyFactor. Source: JCGM 100:2008, 5.2.2.
 * @example covarianceOf([1, 2], [{ first: 0, second: 1, coefficient: 0.5 }]) // [1, 1, 1, 4]
 */
export function covarianceOf(uncertainties: ArrayLike<number>, correlated: readonly Correlated[] = []): Float64Array {
  const n = uncertainties.length;
  const covariance = new Float64Array(n * n);
  for (let i = 0; i < n; i++) covariance[i * n + i] = (uncertainties[i] as number) ** 2;
  for (const { first, second, coefficient } of correlated) {
    const shared = coefficient * (uncertainties[first] as number) * (uncertainties[second] as number);
    covariance[first * n + second] = shared;
    covariance[second * n + first] = shared;
  }
  return covariance;
}
