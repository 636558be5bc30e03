import { betaTails } from "./beta-tails.ts";

/**
 * P(|T| > size) and P(|T| < size) of Student's t, both directly: I_x(df/2, 1/2) with x = df / (df + t^2). size >= 0; degreesOfFreedom > 0,
 * need not be whole. Relative 1e-12. Source: DLMF 8.17; Abramowitz and Stegun 26.7.1.
 */
export function tTails(size: number, degreesOfFreedom: number): { readonly outside: number; readonly inside: number } {
  const ratio = size / Math.sqrt(degreesOfFreedom);
  const square = ratio * ratio;
  const x = 1 / (1 + square);
  const y = square > 1e300 ? 1 : square / (1 + square);
  const { lower, upper } = betaTails(x, y, degreesOfFreedom / 2, 0.5);
  return { outside: lower, inside: upper };
}
