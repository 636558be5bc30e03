import { binomialLowerTail } from "./binomial-lower-tail.ts";
import { binomialUpperTail } from "./binomial-upper-tail.ts";

const SLACK = 64 * Number.EPSILON;

/**
 * Smallest k with P(X <= k) >= lower, that is P(X > k) <= upper (lower + upper = 1; the smaller of the two is used). n: whole, at least 0;
 * probability in [0, 1]. A tail that agrees to 64 ulp counts as reached.
 */
export function binomialQuantileOf(lower: number, upper: number, n: number, probability: number): number {
  const isReached = (k: number): boolean =>
    lower <= upper
      ? binomialLowerTail(k, n, probability) >= lower * (1 - SLACK)
      : binomialUpperTail(k, n, probability) <= upper * (1 + SLACK);
  let [low, high] = [-1, n];
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (isReached(middle)) high = middle;
    else low = middle;
  }
  return high;
}

/**
 * Quantile of the binomial law: the smallest k with P(X <= k) >= p, by halving. p in [0, 1]; n whole, at least 0; probability in [0, 1]. Exact but
 * where p lies within 64 ulp of a step. Source: the definition.
 * @example binomialQuantile(0.025, 15, 0.5) // 4
 */
export const binomialQuantile = (p: number, n: number, probability: number): number =>
  binomialQuantileOf(p, 1 - p, n, probability);
