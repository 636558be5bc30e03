import { type LeastSquares, leastSquares } from "../../numerics/index.ts";

/** How many times its range a column may lie from zero before its distance takes digits. */
const FAR = 100;

/** Least squares of columns less a record of their own, beside the same fit in the columns as they are. */
export type CentredLeastSquares = LeastSquares & {
  /** What was subtracted, one a column; 0 where nothing was. */
  readonly centres: Float64Array;
  /** The fit of the columns less their centres: for predictions, which a large offset would spoil. */
  readonly inner: LeastSquares;
};

/** The record to subtract from each column: its first, where the column lies far from zero and there is a constant to make up for it. */
function centresOf(X: readonly Float64Array[]): Float64Array {
  const centres = new Float64Array(X.length);
  if (!X[0]?.every((value) => value === 1)) return centres;
  for (const [j, column] of X.entries()) {
    let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (let i = 0; i < column.length; i++) {
      low = Math.min(low, column[i] as number);
      high = Math.max(high, column[i] as number);
    }
    const nearest = low > 0 ? low : high < 0 ? -high : 0;
    if (j > 0 && high > low && nearest > FAR * (high - low)) centres[j] = column[0] as number;
  }
  return centres;
}

/**
 * Least squares of y on the columns X, the first of ones where there is a constant. Columns that lie far from zero are fitted less a record, which the
 * constant makes up for; whether columns say the same as others is judged of the columns as they are. X: p columns of n; weights: 0 or above.
 * Source: Bjorck (1996), Numerical Methods for Least Squares Problems, section 2.9.
 */
export function centredLeastSquares(
  X: readonly Float64Array[],
  y: Float64Array,
  weights?: Float64Array,
): CentredLeastSquares {
  const fit = leastSquares(X, y, weights);
  const centres = centresOf(X);
  if (fit.rank < X.length || centres.every((centre) => centre === 0)) return { ...fit, centres, inner: fit };
  const less = X.map((column, j) => column.map((value) => value - (centres[j] as number)));
  const inner = leastSquares(less, y, weights);
  if (inner.rank < X.length) return { ...fit, centres: new Float64Array(X.length), inner: fit };
  const at = (list: ArrayLike<number>) => centres.reduce((sum, centre, j) => sum + centre * (list[j] as number), 0);
  const coefficients = inner.coefficients.slice();
  coefficients[0] = (coefficients[0] as number) - at(inner.coefficients);
  const rows = inner.inverse.map((row) => row.slice());
  const first = inner.inverse.map((row) => (row[0] as number) - at(row));
  for (const [j, row] of rows.entries()) row[0] = first[j] as number;
  rows[0] = Float64Array.from(first, (value, j) => (j === 0 ? value - at(first) : value));
  return { ...inner, coefficients, inverse: rows, centres, inner };
}
