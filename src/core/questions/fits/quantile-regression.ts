// The plane of least absolute residuals by the records that it goes through, with its coefficients to the last digit.
import { leastSquares, preciseLeastSquares, quantilePlane, standardDeviation } from "../../numerics/index.ts";

export type QuantileRegression = {
  readonly coefficients: Float64Array;
  readonly residuals: Float64Array;
  readonly isUnique: boolean;
};

/** Rows of small residuals that are independent of each other: those nearest to the plane of least squares first. */
function independentRows(X: readonly Float64Array[], residuals: Float64Array): Int32Array | null {
  const order = Array.from(residuals, (_, i) => i).sort(
    (a, b) => Math.abs(residuals[a] as number) - Math.abs(residuals[b] as number),
  );
  const chosen: number[] = [];
  const directions: Float64Array[] = [];
  for (const least of [1e-3, 1e-8])
    for (const row of order) {
      if (chosen.length === X.length) return Int32Array.from(chosen);
      const rest = Float64Array.from(X, (column) => column[row] as number);
      const whole = Math.hypot(...rest);
      for (const direction of directions) {
        const along = rest.reduce((sum, value, j) => sum + value * (direction[j] as number), 0);
        for (let j = 0; j < rest.length; j++) rest[j] = (rest[j] as number) - along * (direction[j] as number);
      }
      const left = Math.hypot(...rest);
      if (!(left > least * whole)) continue;
      chosen.push(row);
      directions.push(rest.map((value) => value / left));
    }
  return chosen.length === X.length ? Int32Array.from(chosen) : null;
}

/** Coefficients of the plane through p records, in numbers of 31 digits. */
function through(X: readonly Float64Array[], y: Float64Array, basis: Int32Array): Float64Array {
  const at = (column: Float64Array) => ({
    hi: Float64Array.from(basis, (row) => column[row] as number),
    lo: new Float64Array(basis.length),
  });
  return Float64Array.from(preciseLeastSquares(X.map(at), at(y)).coefficients, ([value]) => value);
}

/**
 * Quantile regression: b that minimizes the sum of tau r above and (tau - 1) r below the plane, exactly, as a plane through p records.
 * X: p columns of length n > p, of full rank, the first of ones where there is a constant; tau in (0, 1). Null where it cannot be solved.
 */
export function quantileRegression(
  X: readonly Float64Array[],
  y: Float64Array,
  tau: number,
  constant: boolean,
): QuantileRegression | null {
  // Columns about their means and of one size: the planes are the same, and their corners easier to tell apart.
  const alike = X.map((column, j) => {
    if (constant && j === 0) return column;
    const middle = constant ? column.reduce((sum, value) => sum + value / column.length, 0) : 0;
    const size = constant ? standardDeviation(column) : Math.hypot(...column.slice(0, 1000)) || 1;
    return column.map((value) => (value - middle) / size);
  });
  const start = independentRows(alike, leastSquares(alike, y).residuals);
  const plane = start && quantilePlane(alike, y, tau, start);
  if (!plane) return null;
  const coefficients = through(X, y, plane.basis);
  const residuals = y.map((value, i) =>
    X.reduce((rest, column, j) => rest - (column[i] as number) * (coefficients[j] as number), value),
  );
  for (const row of plane.basis) residuals[row] = 0;
  return { coefficients, residuals, isUnique: plane.isUnique };
}
