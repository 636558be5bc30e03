import { chiSquareQuantileOf } from "./chi-square-quantile.ts";

/** x with P(X > x) = p of chi-square, p down to 1e-300. p in (0, 1); degreesOfFreedom > 0. Relative 1e-12. Source: see chiSquareQuantile. */
export const chiSquareUpperQuantile = (p: number, degreesOfFreedom: number): number =>
  chiSquareQuantileOf(1 - p, p, degreesOfFreedom);
