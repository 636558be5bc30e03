import { bracketedRoot } from "../bracketed-root.ts";
import { gammaTails } from "./gamma-tails.ts";

const logarithm = (p: number): number => Math.max(-1e5, Math.log(p));

/**
 * Quantile of chi-square: x with P(X < x) = p. p in (0, 1), 0 and Infinity at the ends; degreesOfFreedom > 0. Relative 1e-12.
 * Source: Brent's method on the logarithm of the smaller tail, over log x.
 */
export function chiSquareQuantile(p: number, degreesOfFreedom: number): number {
  if (p <= 0) return 0;
  if (p >= 1) return Number.POSITIVE_INFINITY;
  const target = Math.log(Math.min(p, 1 - p));
  const off = (u: number): number => {
    const tails = gammaTails(degreesOfFreedom / 2, Math.exp(u) / 2);
    return p <= 0.5 ? logarithm(tails.lower) - target : target - logarithm(tails.upper);
  };
  let low = Math.log(degreesOfFreedom) - 1;
  let high = low + 2;
  for (let width = 1; off(low) > 0 && low > -700; width *= 2) low -= width;
  for (let width = 1; off(high) < 0 && high < 700; width *= 2) high += width;
  return Math.exp(bracketedRoot(off, low, high, 1e-16));
}
