import { compensatedSum } from "../compensated-sum.ts";

export type FirstOrder = {
  readonly standard: number;
  /** c_i^2 u_i^2 / u^2: they add up to one where the inputs are independent. */
  readonly shares: readonly number[];
  /** What the correlations add to the variance, as a share of it; below zero where they take away. */
  readonly correlationShare: number;
};

/**
 * Standard uncertainty of a result by the law of propagation: u^2 = sum c_i^2 u_i^2 + 2 sum_{i<j} c_i c_j u(x_i, x_j).
 * sensitivities: c_i = df/dx_i at the estimates, n of them; covariance: n x n, row by row, units to match. Result: in the unit of the result, >= 0;
 * shares are 0 where u is 0. Exact for a linear model; ask secondOrderTerm how far from linear a model is.
 * Source: JCGM 100:2008, equations 10 and 13.
 * @example firstOrderUncertainty([3, 4], [1, 0, 0, 1]).standard // 5
 */
export function firstOrderUncertainty(sensitivities: ArrayLike<number>, covariance: ArrayLike<number>): FirstOrder {
  const n = sensitivities.length;
  const own: number[] = [];
  const shared: number[] = [];
  for (let i = 0; i < n; i++) {
    const c = sensitivities[i] as number;
    own.push(c * c * (covariance[i * n + i] as number));
    for (let j = 0; j < i; j++) shared.push(2 * c * (sensitivities[j] as number) * (covariance[i * n + j] as number));
  }
  const variance = Math.max(0, compensatedSum([...own, ...shared]));
  const shareOf = (part: number) => (variance > 0 ? part / variance : 0);
  return {
    standard: Math.sqrt(variance),
    shares: own.map(shareOf),
    correlationShare: shareOf(compensatedSum(shared)),
  };
}
