import { betaTails } from "./beta-tails.ts";
import { logGamma } from "./log-gamma.ts";

/** P(|T| > size) where size^2 / df is beyond a double: the first term of the series, x^(df/2) / (df/2 B(df/2, 1/2)), on logarithms. */
const farOutside = (ratio: number, half: number): number =>
  Math.exp(-2 * half * Math.log(ratio) - Math.log(half) - logGamma(half) - logGamma(0.5) + logGamma(half + 0.5));

/**
 * P(|T| > size) and P(|T| < size) of Student's t, both directly: I_x(df/2, 1/2) with x = df / (df + t^2). size >= 0; degreesOfFreedom > 0,
 * need not be whole. Relative 1e-12. Source: DLMF 8.17; Abramowitz and Stegun 26.7.1.
 */
export function tTails(size: number, degreesOfFreedom: number): { readonly outside: number; readonly inside: number } {
  const ratio = size / Math.sqrt(degreesOfFreedom);
  if (ratio > 1e140) return { outside: farOutside(ratio, degreesOfFreedom / 2), inside: 1 };
  const square = ratio * ratio;
  const x = 1 / (1 + square);
  const y = square / (1 + square);
  const { lower, upper } = betaTails(x, y, degreesOfFreedom / 2, 0.5);
  return { outside: lower, inside: upper };
}
