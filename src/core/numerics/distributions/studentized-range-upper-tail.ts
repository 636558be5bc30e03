import { type RangeTail, rangeTail } from "./range-tail.ts";
import { scaledChiNodes } from "./scaled-chi-nodes.ts";

/**
 * Upper tail of the studentized range, P(Q > q): the range of `means` standard normal values over an independent standard deviation.
 * q >= 0; means >= 2 whole; degreesOfFreedom > 0, Infinity allowed; tail: rangeTail(means), to share between calls. Relative 1e-7 or better where the tail exceeds 1e-6.
 * Source: the integral of M. D. Copenhaver, B. Holland (1988), J. Stat. Comput. Simul. 30, 1-15, by trapezoidal sums.
 */
export function studentizedRangeUpperTail(
  q: number,
  means: number,
  degreesOfFreedom: number,
  tail: RangeTail = rangeTail(means),
): number {
  if (q <= 0) return 1;
  const { s, w } = scaledChiNodes(degreesOfFreedom);
  let sum = 0;
  for (let i = 0; i < s.length; i++) {
    const weight = w[i] as number;
    if (weight > 1e-22) sum += weight * tail(q * (s[i] as number));
  }
  return Math.min(1, sum);
}
