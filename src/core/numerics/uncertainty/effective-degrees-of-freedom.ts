import { compensatedSum } from "../compensated-sum.ts";

/**
 * Effective degrees of freedom of a combined standard uncertainty (Welch and Satterthwaite): u^4 / sum (u_i^4 / df_i).
 * components: standard uncertainties c_i u_i in the unit of the result, independent of each other, >= 0; degreesOfFreedom: > 0, Infinity where a
 * component is known without doubt. Result: > 0, Infinity where every component is. Computed from ratios, so no power overflows.
 * Source: JCGM 100:2008, equation G.2b; B. L. Welch (1947), Biometrika 34, 28-35; F. E. Satterthwaite (1946), Biometrics 2, 110-114.
 * @example effectiveDegreesOfFreedom([1, 1], [4, 4]) // 8
 */
export function effectiveDegreesOfFreedom(components: readonly number[], degreesOfFreedom: readonly number[]): number {
  const largest = Math.max(...components.map(Math.abs));
  if (!(largest > 0)) return Number.POSITIVE_INFINITY;
  const squares = components.map((one) => (one / largest) ** 2);
  const whole = compensatedSum(squares);
  return whole ** 2 / compensatedSum(squares.map((square, i) => square ** 2 / (degreesOfFreedom[i] as number)));
}
