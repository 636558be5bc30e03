import { tTails } from "./t-tails.ts";

/**
 * Upper tail of Student's t: P(T > t). t: any real; degreesOfFreedom > 0, need not be whole. Relative 1e-12.
 * Source: Abramowitz and Stegun 26.7.1 by the incomplete beta ratio.
 * @example tUpperTail(12, 1) // 0.026464676059589874
 */
export function tUpperTail(t: number, degreesOfFreedom: number): number {
  const { outside, inside } = tTails(Math.abs(t), degreesOfFreedom);
  return t >= 0 ? outside / 2 : 0.5 + inside / 2;
}
