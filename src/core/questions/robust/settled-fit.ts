import { type LeastSquares, leastSquares } from "../../numerics/index.ts";

const STILL = 1e-14;
/** So little and no longer falling for PATIENCE steps is rounding, which may keep the last digits moving. */
const NEARLY = 1e-11;
const PATIENCE = 10;

/** What a fit is started from and what it comes to: coefficients and residuals. */
export type Plane = Pick<LeastSquares, "coefficients" | "residuals">;

/**
 * Least squares weighted again and again by the residuals of the fit before, until the coefficients stand still, over their size or that of y. X, y: of about the size 1;
 * weightsOf: null where no weights can be had, which ends it there. null where it has not settled in `most` steps, or where the weights leave too few records.
 * Source: P. J. Huber (1981), Robust Statistics, section 7.8 (modified weights).
 */
export function settledFit(
  X: readonly Float64Array[],
  y: Float64Array,
  start: Plane,
  weightsOf: (residuals: Float64Array) => Float64Array | null,
  most: number,
): Plane | null {
  let plane = start;
  let [least, since] = [Number.POSITIVE_INFINITY, 0];
  for (let step = 0; step < most; step++) {
    const weights = weightsOf(plane.residuals);
    if (!weights) return plane;
    const next = leastSquares(X, y, weights);
    if (next.rank < X.length) return null;
    const moved =
      Math.hypot(...next.coefficients.map((b, j) => b - (plane.coefficients[j] as number))) /
      Math.max(1, Math.hypot(...next.coefficients));
    since = moved < least ? 0 : since + 1;
    least = Math.min(least, moved);
    plane = next;
    if (moved <= STILL || (least < NEARLY && since > PATIENCE)) return plane;
  }
  return null;
}
