import { stirlingError } from "./stirling-error.ts";

/**
 * Natural logarithm of the gamma function. x > 0. Relative 1e-13 away from its zeros at 1 and 2 (absolute 1e-14 there).
 * Source: DLMF 5.11.1 after shifting the argument above 15.
 */
export const logGamma = (x: number): number =>
  (x + 0.5) * Math.log(x) - x + 0.9189385332046728 + stirlingError(x) - Math.log(x);
