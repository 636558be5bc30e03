/**
 * Lower triangular L with L L' = V, of a covariance or correlation matrix that may be singular (a pair correlated by 1 or -1 is allowed).
 * V: n x n, row by row, symmetric, diagonal >= 0. Result: n x n, row by row, zeros above the diagonal; null where V is no covariance matrix
 * (a pivot below -1e-10 of its diagonal, or a column that no pivot explains): such correlations contradict one another.
 * Source: Golub and Van Loan (2013), Matrix Computations, section 4.2; N. J. Higham (1990) for semidefinite matrices.
 * @example choleskyFactor([4, 2, 2, 2]) // [2, 0, 1, 1]
 */
export function choleskyFactor(V: ArrayLike<number>): Float64Array | null {
  const n = Math.round(Math.sqrt(V.length));
  const L = new Float64Array(n * n);
  for (let j = 0; j < n; j++) {
    const diagonal = V[j * n + j] as number;
    let pivot = diagonal;
    for (let k = 0; k < j; k++) pivot -= (L[j * n + k] as number) ** 2;
    if (!(pivot >= -1e-10 * diagonal)) return null;
    const isSpent = pivot <= 1e-12 * diagonal;
    L[j * n + j] = isSpent ? 0 : Math.sqrt(pivot);
    for (let i = j + 1; i < n; i++) {
      let rest = V[i * n + j] as number;
      for (let k = 0; k < j; k++) rest -= (L[i * n + k] as number) * (L[j * n + k] as number);
      const scale = Math.sqrt(diagonal * (V[i * n + i] as number));
      if (isSpent && Math.abs(rest) > 1e-6 * scale) return null;
      L[i * n + j] = isSpent ? 0 : rest / (L[j * n + j] as number);
    }
  }
  return L;
}
