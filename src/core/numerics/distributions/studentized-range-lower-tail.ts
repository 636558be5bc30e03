import { normalDensity } from "./normal-density.ts";
import { normalUpperTail } from "./normal-upper-tail.ts";
import { scaledChiNodes } from "./scaled-chi-nodes.ts";

const COUNT = 289;

/** P(range of k standard normal values < w): k times the integral of phi(z) (Phi(z) - Phi(z - w))^(k-1) dz, by the trapezoidal rule. */
function rangeLowerTail(w: number, k: number): number {
  let sum = 0;
  for (let i = 0; i < COUNT; i++) {
    const z = -9 + i / 16;
    const between =
      z - w / 2 > 0 ? normalUpperTail(z - w) - normalUpperTail(z) : normalUpperTail(-z) - normalUpperTail(w - z);
    sum += normalDensity(z) * Math.max(0, between) ** (k - 1);
  }
  return Math.min(1, (k * sum) / 16);
}

/**
 * Lower tail of the studentized range, P(Q < q), not by subtraction from 1. q >= 0; means >= 2 whole; degreesOfFreedom > 0, Infinity allowed.
 * Relative 1e-9 for q above 1e-3. Source: see studentizedRangeUpperTail.
 */
export function studentizedRangeLowerTail(q: number, means: number, degreesOfFreedom: number): number {
  if (q <= 0) return 0;
  const { s, w } = scaledChiNodes(degreesOfFreedom);
  let sum = 0;
  for (let i = 0; i < s.length; i++) {
    const weight = w[i] as number;
    if (weight > 1e-22) sum += weight * rangeLowerTail(q * (s[i] as number), means);
  }
  return Math.min(1, sum);
}
