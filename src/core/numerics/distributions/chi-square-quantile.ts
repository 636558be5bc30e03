import { bracketedRoot } from "../bracketed-root.ts";
import { gammaTails } from "./gamma-tails.ts";

const logarithm = (p: number): number => Math.max(-1e5, Math.log(p));

/** x of chi-square with `lower` below and `upper` above it (lower + upper = 1): the smaller of the two is used, whichever it is. */
export function chiSquareQuantileOf(lower: number, upper: number, degreesOfFreedom: number): number {
  if (lower <= 0) return 0;
  if (upper <= 0) return Number.POSITIVE_INFINITY;
  const target = Math.log(Math.min(lower, upper));
  const off = (u: number): number => {
    const tails = gammaTails(degreesOfFreedom / 2, Math.exp(u) / 2);
    return lower <= upper ? logarithm(tails.lower) - target : target - logarithm(tails.upper);
  };
  let low = Math.log(degreesOfFreedom) - 1;
  let high = low + 2;
  for (let width = 1; off(low) > 0 && low > -700; width *= 2) low = Math.max(-700, low - width);
  for (let width = 1; off(high) < 0 && high < 700; width *= 2) high = Math.min(700, high + width);
  if (off(low) > 0) return 0;
  return Math.exp(bracketedRoot(off, low, high, 1e-16));
}

/**
 * Quantile of chi-square: x with P(X < x) = p. p in (0, 1), 0 and Infinity at the ends; degreesOfFreedom > 0. Relative 1e-12; 0 where it is
 * below 1e-300. Source: Brent's method on the logarithm of the smaller tail, over log x.
 */
export const chiSquareQuantile = (p: number, degreesOfFreedom: number): number =>
  chiSquareQuantileOf(p, 1 - p, degreesOfFreedom);
