import { hypergeometricDensity } from "../../numerics/index.ts";

/** Tables no more likely than the one seen, but for rounding. */
export const NO_MORE_LIKELY = 1 + 1e-7;

/**
 * Two-sided p of Fisher's exact test for k1 of n1 against k2 of n2: the sum of all tables with these margins that are no more likely than the
 * one seen (within 1e-7 relative). Whole numbers, 0 <= k <= n. Source: Fisher (1935), The Design of Experiments, section 11.
 * @example fisherP(3, 4, 1, 4) -> 0.4857
 */
export function fisherP(k1: number, n1: number, k2: number, n2: number): number {
  const hits = k1 + k2;
  const seen = hypergeometricDensity(k1, n1, n2, hits);
  let p = 0;
  for (let k = Math.max(0, hits - n2); k <= Math.min(n1, hits); k++) {
    const own = hypergeometricDensity(k, n1, n2, hits);
    if (own <= seen * NO_MORE_LIKELY) p += own;
  }
  return Math.min(1, p);
}
