import { leastSquares, median, variance } from "../../numerics/index.ts";

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
const STILL = 1e-14;

/** Median of the sizes over 0.6745: about zero, not about the median. */
const scaleOf = (residuals: Float64Array): number => median(residuals.map(Math.abs)) / 0.6745;

/** How far coefficients moved, over their size or that of y. */
const distance = (a: Float64Array, b: Float64Array): number =>
  Math.hypot(...a.map((value, j) => value - (b[j] as number))) / Math.max(1, Math.hypot(...b));

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
  let fit = leastSquares(X, y);
  let least = Number.POSITIVE_INFINITY;
  let since = 0;
  for (let step = 0; step < MOST_STEPS; step++) {
    const scale = scaleOf(fit.residuals);
    const weights = fit.residuals.map((r) => (Math.abs(r) <= k * scale ? 1 : (k * scale) / Math.abs(r)));
    const next = scale > 0 ? leastSquares(X, y, weights) : fit;
    const moved = scale > 0 ? distance(next.coefficients, fit.coefficients) : 0;
    since = moved < least ? 0 : since + 1;
    least = Math.min(least, moved);
    fit = next;
    // Rounding may keep the last digits moving.
    if (moved > STILL && !(least < 1e-11 && since > 10)) continue;
    const { coefficients, residuals } = fit;
    const last = scaleOf(residuals);
    return {
      coefficients,
      residuals,
      scale: last,
      weights: residuals.map((r) => (Math.abs(r) <= k * last ? 1 : (k * last) / Math.abs(r))),
      covariance: covarianceOf(X, residuals, last, k),
    };
  }
  return null;
}
