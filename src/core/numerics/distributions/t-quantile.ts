import { betaOddsQuantile } from "./beta-odds-quantile.ts";

/**
 * Quantile of Student's t: t with P(T < t) = p. p in (0, 1), infinite at the ends; degreesOfFreedom > 0. Relative 1e-12.
 * Source: t^2 / df are the odds of a beta law with shapes 1/2 and df/2 (Abramowitz and Stegun 26.7.1).
 * @example tQuantile(0.975, 9) // 2.2621571628
 */
export function tQuantile(p: number, degreesOfFreedom: number): number {
  if (p <= 0) return Number.NEGATIVE_INFINITY;
  if (p >= 1) return Number.POSITIVE_INFINITY;
  if (p === 0.5) return 0;
  const tail = p < 0.5 ? p : 1 - p;
  const inside = p < 0.5 ? 1 - 2 * p : 2 * p - 1;
  const size =
    Math.sqrt(degreesOfFreedom) * Math.exp(betaOddsQuantile(inside, 2 * tail, 0.5, degreesOfFreedom / 2) / 2);
  return p < 0.5 ? -size : size;
}
