import { chiSquareUpperTail } from "../../numerics/index.ts";
import type { LinearFit } from "../fits/linear-fit.ts";
import { explainedShare, linearFit, ones } from "../fits/linear-fit.ts";

/**
 * Does the scatter change along x? n R2 of the squared residuals on x, chi-square with as many degrees of freedom as there are x.
 * Returns the p of an even scatter; 1 where it cannot be tested. Source: R. Koenker (1981), Journal of Econometrics 17, 107-112.
 */
export function spreadCheck(fit: LinearFit, x: readonly Float64Array[]): number {
  const squares = fit.residuals.map((e) => e * e);
  const line = linearFit([ones(squares.length), ...x], squares);
  if (line.rank <= x.length || line.degreesOfFreedom < 1) return 1;
  const { r2 } = explainedShare(line, squares, true);
  return Number.isFinite(r2) ? chiSquareUpperTail(Math.max(0, squares.length * r2), x.length) : 1;
}
