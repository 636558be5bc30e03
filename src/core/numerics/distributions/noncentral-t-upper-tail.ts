import { normalUpperTail } from "./normal-upper-tail.ts";
import { scaledChiNodes } from "./scaled-chi-nodes.ts";

/**
 * Upper tail of the noncentral t law, P((Z + noncentrality) / S > t): the mean of P(Z > t S - noncentrality) over S = sqrt(chi-square / df).
 * t, noncentrality: any real; degreesOfFreedom > 0. Relative 1e-9 where the tail exceeds 1e-13; all terms are positive.
 * Source: N. L. Johnson, S. Kotz, N. Balakrishnan (1995), Continuous Univariate Distributions 2, section 31.1.
 */
export function noncentralTUpperTail(t: number, degreesOfFreedom: number, noncentrality: number): number {
  const { s, w } = scaledChiNodes(degreesOfFreedom);
  let sum = 0;
  for (let i = 0; i < s.length; i++) sum += (w[i] as number) * normalUpperTail(t * (s[i] as number) - noncentrality);
  return Math.min(1, sum);
}
