import { bracketedRoot } from "../bracketed-root.ts";
import { betaTails } from "./beta-tails.ts";
import { logGamma } from "./log-gamma.ts";

const logarithm = (p: number): number => Math.max(-1e5, Math.log(p));

/**
 * log(x / (1 - x)) at which the beta law has `lower` below and `upper` above (lower + upper = 1; the smaller of the two is used).
 * a, b > 0. Searching the log odds keeps both ends exact: 1e-33 is found as well as 0.5. Relative 1e-12 of the odds.
 * Beyond 1e±304 of the odds the tail is the first term of its series, x^a / (a B(a, b)), which is solved for.
 * Source: root of betaTails by Brent's method on the logarithm of the smaller tail.
 */
export function betaOddsQuantile(lower: number, upper: number, a: number, b: number): number {
  const small = Math.min(lower, upper);
  const target = Math.log(small);
  const off = (u: number): number => {
    const tails = betaTails(1 / (1 + Math.exp(-u)), 1 / (1 + Math.exp(u)), a, b);
    return lower <= upper ? logarithm(tails.lower) - target : target - logarithm(tails.upper);
  };
  let low = Math.log(a / b) - 1;
  let high = low + 2;
  for (let width = 1; off(low) > 0 && low > -700; width *= 2) low = Math.max(-700, low - width);
  for (let width = 1; off(high) < 0 && high < 700; width *= 2) high = Math.min(700, high + width);
  const logBeta = () => logGamma(a) + logGamma(b) - logGamma(a + b);
  if (off(low) > 0) return (Math.log(lower * a) + logBeta()) / a;
  if (off(high) < 0) return -(Math.log(upper * b) + logBeta()) / b;
  return bracketedRoot(off, low, high, 1e-16);
}
