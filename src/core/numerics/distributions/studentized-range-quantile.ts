import { bracketedRoot } from "../bracketed-root.ts";
import { type RangeTail, rangeTail } from "./range-tail.ts";
import { studentizedRangeUpperTail } from "./studentized-range-upper-tail.ts";

/**
 * Quantile of the studentized range: q with P(Q < q) = p. p in (0, 1); means >= 2 whole; degreesOfFreedom > 0, Infinity allowed.
 * Relative 1e-8. Source: Brent's method on the logarithm of studentizedRangeUpperTail, over log q.
 * @example studentizedRangeQuantile(0.9, 2, 10) // 2.563207101
 */
export const studentizedRangeQuantile = (
  p: number,
  means: number,
  degreesOfFreedom: number,
  tail: RangeTail = rangeTail(means),
): number => studentizedRangeUpperQuantile(1 - p, means, degreesOfFreedom, tail);

/** q with P(Q > q) = upper. Arguments and accuracy as studentizedRangeQuantile. */
export function studentizedRangeUpperQuantile(
  upper: number,
  means: number,
  degreesOfFreedom: number,
  tail: RangeTail = rangeTail(means),
): number {
  const target = Math.log(upper);
  const off = (u: number): number =>
    target - Math.max(-700, Math.log(studentizedRangeUpperTail(Math.exp(u), means, degreesOfFreedom, tail)));
  let low = 0;
  let high = 1.5;
  while (off(low) > 0 && low > -30) low -= 1;
  while (off(high) < 0 && high < 60) high += 1;
  return Math.exp(bracketedRoot(off, low, high, 1e-11));
}
