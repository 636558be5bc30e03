import { compensatedSum } from "../../numerics/index.ts";
import { twoByTwoLaw, twoByTwoProbabilities } from "./two-by-two-law.ts";

/** Tables whose probabilities differ by less than this share count as equally likely. */
export const EQUALLY_LIKELY = 1e-7;

/** p of a 2 x 2 table: both sides, and each side alone. */
export type FisherProbabilities = { readonly twoSided: number; readonly greater: number; readonly less: number };

/**
 * Fisher's exact test for k1 of n1 against k2 of n2, given both margins. Two-sided: the sum of all tables that are no more likely than the one
 * seen (within 1e-7 relative); greater: k1 or more; less: k1 or fewer. Whole numbers, 0 <= k <= n.
 * logOdds: logarithm of the odds ratio tested, 0 for no difference. Relative 1e-12.
 * Source: R. A. Fisher (1935), The Design of Experiments, section 11.
 * @example fisherProbabilities(3, 4, 1, 4).twoSided // 0.4857142857142857 (34/70, the lady tasting tea)
 */
export function fisherProbabilities(k1: number, n1: number, k2: number, n2: number, logOdds = 0): FisherProbabilities {
  const law = twoByTwoLaw(k1, n1, k2, n2);
  const chances = twoByTwoProbabilities(law, logOdds);
  const at = k1 - law.low;
  const most = (chances[at] as number) * (1 + EQUALLY_LIKELY);
  const capped = (terms: Float64Array) => Math.min(1, compensatedSum(terms));
  return {
    twoSided: capped(chances.filter((each) => each <= most)),
    greater: capped(chances.subarray(at)),
    less: capped(chances.subarray(0, at + 1)),
  };
}
