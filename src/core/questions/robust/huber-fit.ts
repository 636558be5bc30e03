import { leastSquares, median, variance } from "../../numerics/index.ts";
import { settledFit } from "./settled-fit.ts";

/** A fit by weights that depend on the residuals over their scale. */
export type RobustFit = {
  readonly coefficients: Float64Array;
  readonly residuals: Float64Array;
  readonly scale: number;
  readonly weights: Float64Array;
  /** Of the coefficients, p by p row by row. */
  readonly covariance: Float64Array;
};

const MOST_STEPS = 5000;

/** Median of the sizes over 0.6745: about zero, not about the median. */
const scaleOf = (residuals: Float64Array): number => median(residuals.map(Math.abs)) / 0.6745;

/** Covariance of an M-estimate whose scale was found beside it. Source: P. J. Huber (1981), Robust Statistics, section 7.6, eq. 6.5. */
function covarianceOf(X: readonly Float64Array[], residuals: Float64Array, scale: number, k: number): Float64Array {
  const [n, p] = [residuals.length, X.length];
  const inside = residuals.map((r) => (Math.abs(r) <= k * scale ? 1 : 0));
  const share = inside.reduce((sum, one) => sum + one, 0) / n;
  const squares = residuals.reduce((sum, r) => sum + Math.min(Math.abs(r), k * scale) ** 2, 0);
  const correction = 1 + (p * variance(inside)) / (n * share * share);
  const factor = (Math.sqrt(squares / (n - p)) * correction) / share;
  const { inverse } = leastSquares(X, residuals);
  return Float64Array.from(inverse.flatMap((row) => [...row].map((value) => factor * factor * value)));
}

/**
 * Huber's M-estimate, a residual of more than k scales weighing k scales over its size, by least squares weighted again and again from least squares on, the scale
 * found anew at each step. X: p columns of length n > p, of full rank, they and y of about the size 1; k > 0. Scale 0 where half of the records lie on the plane; null where it does not settle.
 * Source: P. J. Huber (1964), Ann. Math. Statist. 35, 73-101; (1981), Robust Statistics, chapter 7.
 */
export function huberFit(X: readonly Float64Array[], y: Float64Array, k: number): RobustFit | null {
  const weigh = (residuals: Float64Array, scale: number) =>
    residuals.map((r) => (Math.abs(r) <= k * scale ? 1 : (k * scale) / Math.abs(r)));
  const weightsOf = (residuals: Float64Array) => {
    const scale = scaleOf(residuals);
    return scale > 0 ? weigh(residuals, scale) : null;
  };
  const plane = settledFit(X, y, leastSquares(X, y), weightsOf, MOST_STEPS);
  if (!plane) return null;
  const { coefficients, residuals } = plane;
  const scale = scaleOf(residuals);
  const covariance = covarianceOf(X, residuals, scale, k);
  return { coefficients, residuals, scale, weights: weigh(residuals, scale), covariance };
}
