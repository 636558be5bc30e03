import { compensatedSum } from "../../numerics/index.ts";

/**
 * The law of the first cell of a 2 x 2 table whose margins are given: how many of the `hits` fall among the first `n1`, for an odds ratio w.
 *
 *   P(k) = C(n1, k) C(n2, hits - k) w^k / sum over the same,   max(0, hits - n2) <= k <= min(n1, hits)
 *
 * `logWeights[k - low]`: the logarithm of C(n1, k) C(n2, hits - k), zero at the likeliest count for w = 1.
 */
export type TwoByTwoLaw = { readonly low: number; readonly high: number; readonly logWeights: Float64Array };

/**
 * The law for k1 of n1 beside k2 of n2. Whole numbers, 0 <= k <= n. Built outward from the likeliest count by the ratio of neighbours,
 *   P(k + 1) / P(k) = (n1 - k)(hits - k) / ((k + 1)(n2 - hits + k + 1)),
 * with compensated sums, so that the logarithms near the middle have no error to speak of: probabilities relative 1e-13.
 * Source: N. L. Johnson, A. W. Kemp, S. Kotz (2005), Univariate Discrete Distributions, section 6.11 (Fisher's noncentral law).
 */
export function twoByTwoLaw(k1: number, n1: number, k2: number, n2: number): TwoByTwoLaw {
  const hits = k1 + k2;
  const [low, high] = [Math.max(0, hits - n2), Math.min(n1, hits)];
  const likeliest = Math.min(high, Math.max(low, Math.floor(((hits + 1) * (n1 + 1)) / (n1 + n2 + 2))));
  const logWeights = new Float64Array(high - low + 1);
  const ratio = (k: number) => ((n1 - k) / (k + 1)) * ((hits - k) / (n2 - hits + k + 1));
  const walk = (first: number, last: number, step: 1 | -1) => {
    let [sum, lost] = [0, 0];
    for (let k = first; k !== last; k += step) {
      const term = step > 0 ? Math.log(ratio(k)) : -Math.log(ratio(k - 1));
      const next = sum + term;
      lost += Math.abs(sum) >= Math.abs(term) ? sum - next + term : term - next + sum;
      sum = next;
      logWeights[k + step - low] = sum + lost;
    }
  };
  walk(likeliest, high, 1);
  walk(likeliest, low, -1);
  return { low, high, logWeights };
}

/** Probabilities of all counts from `low` to `high` at the odds ratio exp(logOdds); they sum to one. logOdds: any finite number. */
export function twoByTwoProbabilities({ low, logWeights }: TwoByTwoLaw, logOdds: number): Float64Array {
  const tilted = logWeights.map((weight, at) => weight + (low + at) * logOdds);
  const largest = tilted.reduce((most, each) => Math.max(most, each), Number.NEGATIVE_INFINITY);
  for (let at = 0; at < tilted.length; at++) tilted[at] = Math.exp((tilted[at] as number) - largest);
  const all = compensatedSum(tilted);
  for (let at = 0; at < tilted.length; at++) tilted[at] = (tilted[at] as number) / all;
  return tilted;
}
