import { sumOfSquares } from "./sum-of-squares.ts";

/** Sample variance with n - 1, by two passes. x: at least two finite numbers; unit of x squared; NaN for fewer. Source: see sumOfSquares. */
export const variance = (x: ArrayLike<number>): number =>
  x.length < 2 ? Number.NaN : sumOfSquares(x) / (x.length - 1);
