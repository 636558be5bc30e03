import { chiSquareLowerTail } from "./chi-square-lower-tail.ts";
import { chiSquareUpperTail } from "./chi-square-upper-tail.ts";
import { normalDensity } from "./normal-density.ts";
import { normalUpperTail } from "./normal-upper-tail.ts";
import { scaledChiNodes } from "./scaled-chi-nodes.ts";

const STEP = 0.125;
const REACH = 14;

/** Whether the tail over log S is a narrower step than the one over Z, so that the mean is to be taken over Z. */
export const isNarrowOverChi = (t: number, degreesOfFreedom: number, noncentrality: number): boolean =>
  t !== 0 && Math.abs(noncentrality) > 10 && Math.abs(noncentrality) > Math.sqrt(degreesOfFreedom / 2);

/** Mean of g over the standard normal law, by the trapezoidal rule. g: finite, smooth over a step of 1/8. */
export function meanOverNormal(g: (z: number) => number): number {
  let sum = 0;
  for (let z = -REACH; z <= REACH; z += STEP) sum += STEP * normalDensity(z) * g(z);
  return sum;
}

/** The mean over Z of what S leaves: P(S < (Z + noncentrality) / t), for t below zero P(S > (Z + noncentrality) / t). */
function overNormal(t: number, degreesOfFreedom: number, noncentrality: number): number {
  const tail = t > 0 ? chiSquareLowerTail : chiSquareUpperTail;
  return meanOverNormal((z) => {
    const s = (z + noncentrality) / t;
    return s > 0 ? tail(degreesOfFreedom * s * s, degreesOfFreedom) : t > 0 ? 0 : 1;
  });
}

/** The mean over S of P(Z > t S - noncentrality). */
function overChi(t: number, degreesOfFreedom: number, noncentrality: number): number {
  const { s, w } = scaledChiNodes(degreesOfFreedom);
  let sum = 0;
  for (let i = 0; i < s.length; i++) sum += (w[i] as number) * normalUpperTail(t * (s[i] as number) - noncentrality);
  return sum;
}

/**
 * Upper tail of the noncentral t law, P((Z + noncentrality) / S > t), S = sqrt(chi-square / df), by the trapezoidal rule over whichever of Z and log S
 * leaves the smoother tail of the other: over log S that tail is a step of width 1 / noncentrality, over Z one of width noncentrality / sqrt(2 df).
 * t, noncentrality: any real; degreesOfFreedom > 0. Relative 1e-9 where the tail exceeds 1e-13; all terms are positive.
 * Source: N. L. Johnson, S. Kotz, N. Balakrishnan (1995), Continuous Univariate Distributions 2, section 31.1.
 */
export function noncentralTUpperTail(t: number, degreesOfFreedom: number, noncentrality: number): number {
  const over = isNarrowOverChi(t, degreesOfFreedom, noncentrality) ? overNormal : overChi;
  return Math.min(1, over(t, degreesOfFreedom, noncentrality));
}
