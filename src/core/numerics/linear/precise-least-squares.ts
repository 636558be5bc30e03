import type { DoubleDouble } from "./double-double.ts";
import { negative, productOf, quotientOf, rootOf, sumOf } from "./double-double.ts";
import { addMultiple, type DoubleDoubleColumn, innerProduct } from "./double-double-column.ts";

export type PreciseLeastSquares = {
  /** One for each column. */
  readonly coefficients: readonly DoubleDouble[];
  /** Row j: the j-th row of R^-1, so that the inverse of X'X is R^-1 (R^-1)'. */
  readonly inverseRoot: readonly (readonly DoubleDouble[])[];
  /** What each column adds to the explained sum of squares after those before it. */
  readonly explained: readonly DoubleDouble[];
  readonly residualSumOfSquares: DoubleDouble;
};

const ZERO: DoubleDouble = [0, 0];
const entry = ({ hi, lo }: DoubleDoubleColumn, i: number): DoubleDouble => [hi[i] as number, lo[i] as number];
const squareOf = (value: DoubleDouble): DoubleDouble => productOf(value, value);

/** Reflects the columns after j and y so that column j has nothing below its place j; gives the entry that stands there, zero for none left. */
function reflectedAt(columns: readonly DoubleDoubleColumn[], y: DoubleDoubleColumn, j: number): DoubleDouble {
  const v = columns[j] as DoubleDoubleColumn;
  const length = rootOf(innerProduct(v, v, j));
  if (!(length[0] > 0)) return ZERO;
  const diagonal = (v.hi[j] as number) > 0 ? negative(length) : length;
  const [hi, lo] = sumOf(entry(v, j), negative(diagonal));
  v.hi[j] = hi;
  v.lo[j] = lo;
  const half = innerProduct(v, v, j);
  for (const other of [...columns.slice(j + 1), y]) {
    const share = quotientOf(innerProduct(v, other, j), half);
    addMultiple(other, [-2 * share[0], -2 * share[1]], v, j);
  }
  return diagonal;
}

/** Solves R b = c, R upper triangular with the given diagonal, its rest in the columns. */
function solvedTriangle(
  columns: readonly DoubleDoubleColumn[],
  diagonal: readonly DoubleDouble[],
  c: readonly DoubleDouble[],
): DoubleDouble[] {
  const b = c.map(() => ZERO);
  for (let j = c.length - 1; j >= 0; j--) {
    let rest = c[j] ?? ZERO;
    for (let k = j + 1; k < c.length; k++)
      rest = sumOf(rest, negative(productOf(entry(columns[k] as DoubleDoubleColumn, j), b[k] ?? ZERO)));
    b[j] = quotientOf(rest, diagonal[j] ?? ZERO);
  }
  return b;
}

/**
 * Least squares in numbers of 31 digits, by Householder reflections without pivoting: b that minimizes |y - X b|^2, with all that a fit tells.
 * X: p columns of length n >= p, of full rank, entries between 1e-100 and 1e100 in size or 0; y: length n; both are used up.
 * Coefficients keep 31 digits less those of the condition number: 16 where it is 1e15, as for the raw powers of the NIST set Filip.
 * Source: A. Bjorck (1996), Numerical Methods for Least Squares Problems, section 2.3.2.
 */
export function preciseLeastSquares(X: readonly DoubleDoubleColumn[], y: DoubleDoubleColumn): PreciseLeastSquares {
  const diagonal = X.map((_, j) => reflectedAt(X, y, j));
  const right = X.map((_, j) => entry(y, j));
  const columns = X.map((_, j) =>
    solvedTriangle(
      X,
      diagonal,
      X.map((_one, k): DoubleDouble => (k === j ? [1, 0] : ZERO)),
    ),
  );
  return {
    coefficients: solvedTriangle(X, diagonal, right),
    inverseRoot: X.map((_, row) => columns.map((column) => column[row] ?? ZERO)),
    explained: right.map(squareOf),
    residualSumOfSquares: innerProduct(y, y, X.length),
  };
}
