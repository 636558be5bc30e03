import { bracketedRoot } from "../bracketed-root.ts";
import { noncentralTLowerTail } from "./noncentral-t-lower-tail.ts";
import { noncentralTUpperTail } from "./noncentral-t-upper-tail.ts";

const logarithm = (p: number): number => Math.max(-1e5, Math.log(p));

/**
 * Quantile of the noncentral t law: t with `lower` below and `upper` above it (lower + upper = 1); the smaller of the two is used, the ends are infinite.
 * degreesOfFreedom > 0; noncentrality any real. Relative 1e-9 where the smaller tail is above 1e-13. Source: Brent's method on the logarithm of that tail.
 */
export function noncentralTQuantile(
  lower: number,
  upper: number,
  degreesOfFreedom: number,
  noncentrality: number,
): number {
  if (lower <= 0) return Number.NEGATIVE_INFINITY;
  if (upper <= 0) return Number.POSITIVE_INFINITY;
  const target = Math.log(Math.min(lower, upper));
  const off = (t: number): number =>
    lower <= upper
      ? logarithm(noncentralTLowerTail(t, degreesOfFreedom, noncentrality)) - target
      : target - logarithm(noncentralTUpperTail(t, degreesOfFreedom, noncentrality));
  let low = noncentrality - 1;
  let high = noncentrality + 1;
  for (let width = 1; off(low) > 0 && width < 1e150; width *= 2) low -= width;
  for (let width = 1; off(high) < 0 && width < 1e150; width *= 2) high += width;
  return off(low) > 0 || off(high) < 0 ? Number.NaN : bracketedRoot(off, low, high);
}
