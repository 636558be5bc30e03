import { logGamma } from "../../numerics/index.ts";

/**
 * Two-sided p of Fisher's exact test for k1 of n1 against k2 of n2: the sum of all tables with these margins that are no more likely than the
 * one seen (within 1e-7 relative). Whole numbers, 0 <= k <= n. Source: Fisher (1935), The Design of Experiments, section 11.
 */
export function fisherExact(k1: number, n1: number, k2: number, n2: number): number {
  const hits = k1 + k2;
  const choose = (n: number, k: number) => logGamma(n + 1) - logGamma(k + 1) - logGamma(n - k + 1);
  const whole = choose(n1 + n2, hits);
  const chance = (k: number) => Math.exp(choose(n1, k) + choose(n2, hits - k) - whole);
  const seen = chance(k1);
  let p = 0;
  for (let k = Math.max(0, hits - n2); k <= Math.min(n1, hits); k++) {
    const own = chance(k);
    if (own <= seen * (1 + 1e-7)) p += own;
  }
  return Math.min(1, p);
}
