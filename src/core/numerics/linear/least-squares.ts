import { compensatedSum } from "../compensated-sum.ts";
import type { HouseholderQr } from "./householder-qr.ts";
import { householderQr, reflected } from "./householder-qr.ts";

export type LeastSquares = {
  /** One for each column; NaN for all when the rank is short. */
  readonly coefficients: Float64Array;
  /** y minus its fit, not weighted. */
  readonly residuals: Float64Array;
  readonly fitted: Float64Array;
  /** Diagonal of the hat matrix (of the weighted problem). */
  readonly leverage: Float64Array;
  /** Inverse of X'WX, p by p: times the residual variance it is the covariance of the coefficients. */
  readonly inverse: readonly Float64Array[];
  readonly rank: number;
  /** Numbers of the columns that say the same as the others. */
  readonly dependent: readonly number[];
  /** Weighted sum of squared residuals. */
  readonly residualSumOfSquares: number;
  /** Records with weight less rank. */
  readonly degreesOfFreedom: number;
};

const TOLERANCE = 1e-13;

function solved(qr: HouseholderQr, right: Float64Array): Float64Array {
  const p = qr.rank;
  const out = new Float64Array(p);
  for (let j = p - 1; j >= 0; j--) {
    let sum = right[j] as number;
    for (let k = j + 1; k < p; k++) sum -= ((qr.columns[k] as Float64Array)[j] as number) * (out[k] as number);
    out[j] = sum / (qr.diagonal[j] as number);
  }
  return out;
}

/** Rows of the inverse of R, each with the pivoted column it belongs to. */
function inverseOfR(qr: HouseholderQr): Float64Array[] {
  return Array.from({ length: qr.rank }, (_, j) => {
    const unit = new Float64Array(qr.rank);
    unit[j] = 1;
    return solved(qr, unit);
  });
}

/** The power of two nearest the largest size in a column, so that squares neither overflow nor vanish; 1 for a column of zeros. */
function sizeOf(column: Float64Array): number {
  let largest = 0;
  for (let i = 0; i < column.length; i++) largest = Math.max(largest, Math.abs(column[i] as number));
  return largest > 0 && Number.isFinite(largest)
    ? 2 ** Math.max(-1000, Math.min(1000, Math.round(Math.log2(largest))))
    : 1;
}

/** A column over its size, times the roots of the weights where there are any. */
function scaled(column: Float64Array, size: number, root: Float64Array | null): Float64Array {
  const made = new Float64Array(column.length);
  for (let i = 0; i < made.length; i++) made[i] = (column[i] as number) / size;
  if (root) for (let i = 0; i < made.length; i++) made[i] = (made[i] as number) * (root[i] as number);
  return made;
}

/** y - X b, each a compensated sum; column after column. Source: D. E. Knuth (1998), The Art of Computer Programming 2, 4.2.2, theorem B. */
function residualsOf(X: readonly Float64Array[], y: Float64Array, b: Float64Array): Float64Array {
  const sums = y.slice();
  const lost = new Float64Array(y.length);
  for (const [j, column] of X.entries()) {
    const factor = -(b[j] as number);
    for (let i = 0; i < sums.length; i++) {
      const [sum, term] = [sums[i] as number, factor * (column[i] as number)];
      const next = sum + term;
      const part = next - sum;
      lost[i] = (lost[i] as number) + (sum - (next - part) + (term - part));
      sums[i] = next;
    }
  }
  for (let i = 0; i < sums.length; i++) sums[i] = (sums[i] as number) + (lost[i] as number);
  return sums;
}

function sumOfWeightedSquares(residuals: Float64Array, weights: Float64Array | undefined): number {
  const squares = new Float64Array(residuals.length);
  for (let i = 0; i < squares.length; i++)
    squares[i] = (residuals[i] as number) ** 2 * (weights ? (weights[i] as number) : 1);
  return compensatedSum(squares);
}

/** Inverse of X'WX from R: R^-1 R^-T, in the order and the units of the columns. */
function inverseOf(qr: HouseholderQr, sizes: readonly number[]): Float64Array[] {
  const columns = inverseOfR(qr);
  const inverse = sizes.map(() => new Float64Array(sizes.length));
  for (let a = 0; a < qr.rank; a++)
    for (let b = 0; b < qr.rank; b++) {
      let sum = 0;
      for (let j = Math.max(a, b); j < qr.rank; j++)
        sum += ((columns[j] as Float64Array)[a] as number) * ((columns[j] as Float64Array)[b] as number);
      const [row, column] = [qr.pivot[a] as number, qr.pivot[b] as number];
      (inverse[row] as Float64Array)[column] = sum / (sizes[row] as number) / (sizes[column] as number);
    }
  return inverse;
}

function leverageOf(qr: HouseholderQr, n: number): Float64Array {
  const leverage = new Float64Array(n);
  for (let j = 0; j < qr.rank; j++) {
    const q = new Float64Array(n);
    q[j] = 1;
    for (let k = j; k >= 0; k--) reflected(qr, k, q);
    for (let i = 0; i < n; i++) leverage[i] = (leverage[i] as number) + (q[i] as number) ** 2;
  }
  return leverage;
}

/**
 * Least squares: the b that minimizes sum w (y - X b)^2, by Householder QR with column pivoting; the rank is what the columns have, and a
 * column that says the same as the others is named, never dropped in silence. One step of refinement on the residuals.
 * X: p columns of length n, scaled or not; y: length n; weights: > 0 or 0 (such a row is predicted but does not count), default 1.
 * Coefficients lose about the digits of the condition number of the scaled columns.
 * Source: Golub and Van Loan (2013), section 5.3.3; A. Bjorck (1996), Numerical Methods for Least Squares Problems, section 2.9.
 */
export function leastSquares(X: readonly Float64Array[], y: Float64Array, weights?: Float64Array): LeastSquares {
  const n = y.length;
  const p = X.length;
  const root = weights ? weights.map(Math.sqrt) : null;
  const sizes = X.map(sizeOf);
  const qr = householderQr(
    X.map((column, j) => scaled(column, sizes[j] as number, root)),
    TOLERANCE,
  );
  const coefficients = new Float64Array(p).fill(qr.rank < p ? Number.NaN : 0);
  let residuals: Float64Array = y.slice();
  for (let pass = 0; pass < 2 && qr.rank === p; pass++) {
    const right = scaled(residuals, 1, root);
    for (let j = 0; j < qr.rank; j++) reflected(qr, j, right);
    const step = solved(qr, right);
    for (let j = 0; j < p; j++) {
      const at = qr.pivot[j] as number;
      coefficients[at] = (coefficients[at] as number) + (step[j] as number) / (sizes[at] as number);
    }
    residuals = residualsOf(X, y, coefficients);
  }
  const fitted = new Float64Array(n);
  for (let i = 0; i < n; i++) fitted[i] = (y[i] as number) - (residuals[i] as number);
  const counted = root ? root.reduce((count, w) => count + (w > 0 ? 1 : 0), 0) : n;
  return {
    coefficients,
    residuals,
    fitted,
    leverage: leverageOf(qr, n),
    inverse: inverseOf(qr, sizes),
    rank: qr.rank,
    dependent: qr.pivot.slice(qr.rank),
    residualSumOfSquares: sumOfWeightedSquares(residuals, weights),
    degreesOfFreedom: counted - qr.rank,
  };
}
