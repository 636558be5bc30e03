/** What follows from a symmetric positive definite matrix by its Cholesky factor. */
export type PositiveDefinite = {
  readonly logDeterminant: number;
  readonly solve: (right: ArrayLike<number>) => Float64Array;
  /** Row by row. */
  readonly inverse: () => Float64Array;
};

/**
 * Factors a symmetric positive definite matrix, row by row, of n x n numbers: V = L L'. null where it is none (a pivot below 1e-14 of its diagonal).
 * Source: Golub and Van Loan (2013), Matrix Computations, algorithm 4.2.1.
 * @example positiveDefinite([4, 2, 2, 3], 2)?.solve([8, 7]) // [1.25, 1.5]
 */
export function positiveDefinite(V: ArrayLike<number>, n: number): PositiveDefinite | null {
  const L = new Float64Array(n * n);
  let logDeterminant = 0;
  for (let j = 0; j < n; j++)
    for (let i = j; i < n; i++) {
      let rest = V[i * n + j] as number;
      for (let k = 0; k < j; k++) rest -= (L[i * n + k] as number) * (L[j * n + k] as number);
      if (i > j) L[i * n + j] = rest / (L[j * n + j] as number);
      else if (!(rest > 1e-14 * (V[j * n + j] as number))) return null;
      else {
        L[j * n + j] = Math.sqrt(rest);
        logDeterminant += Math.log(rest);
      }
    }
  const solve = (right: ArrayLike<number>): Float64Array => {
    const x = Float64Array.from(right);
    for (let i = 0; i < n; i++) {
      for (let k = 0; k < i; k++) x[i] = (x[i] as number) - (L[i * n + k] as number) * (x[k] as number);
      x[i] = (x[i] as number) / (L[i * n + i] as number);
    }
    for (let i = n - 1; i >= 0; i--) {
      for (let k = i + 1; k < n; k++) x[i] = (x[i] as number) - (L[k * n + i] as number) * (x[k] as number);
      x[i] = (x[i] as number) / (L[i * n + i] as number);
    }
    return x;
  };
  const inverse = (): Float64Array => {
    const whole = new Float64Array(n * n);
    for (let j = 0; j < n; j++) {
      const unit = new Float64Array(n);
      unit[j] = 1;
      const column = solve(unit);
      for (let i = 0; i < n; i++) whole[i * n + j] = column[i] as number;
    }
    return whole;
  };
  return { logDeterminant, solve, inverse };
}
