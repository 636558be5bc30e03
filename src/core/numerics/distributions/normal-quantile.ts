import { normalLogUpperTail } from "./normal-log-upper-tail.ts";

/** z > 0 with P(Z > z) = p for p < 1/2: Newton on the logarithm of the tail, which is concave, so every step after the first helps. */
function upperQuantile(p: number): number {
  const target = Math.log(p);
  const r = Math.sqrt(-2 * target);
  let z = Math.max(
    0,
    r - (2.515517 + r * (0.802853 + r * 0.010328)) / (1 + r * (1.432788 + r * (0.189269 + r * 0.001308))),
  );
  for (let i = 0; i < 20; i++) {
    const log = normalLogUpperTail(z);
    const hazard = Math.exp(-0.5 * z * z - 0.9189385332046728 - log);
    const step = (log - target) / hazard;
    z += step;
    if (Math.abs(step) <= 1e-15 * z) break;
  }
  return z;
}

/**
 * Quantile of the standard normal law: z with P(Z < z) = p. p in (0, 1); -Infinity and Infinity at the ends. Relative 1e-13.
 * Source: start from Abramowitz and Stegun 26.2.23, then Newton's method on the log tail (at most 20 steps, stop at 1e-15 relative).
 * @example normalQuantile(0.975) // 1.959963984540054
 */
export function normalQuantile(p: number): number {
  if (p <= 0) return Number.NEGATIVE_INFINITY;
  if (p >= 1) return Number.POSITIVE_INFINITY;
  if (p === 0.5) return 0;
  return p < 0.5 ? -upperQuantile(p) : upperQuantile(1 - p);
}
