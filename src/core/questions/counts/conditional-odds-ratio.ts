import { bracketedRoot, compensatedSum } from "../../numerics/index.ts";
import { type TwoByTwoLaw, twoByTwoLaw, twoByTwoProbabilities } from "./two-by-two-law.ts";

/** The logarithm of the sum of exp(terms). */
function logOfSum(terms: Float64Array): number {
  const largest = terms.reduce((most, each) => Math.max(most, each), Number.NEGATIVE_INFINITY);
  return largest + Math.log(compensatedSum(terms.map((each) => Math.exp(each - largest))));
}

/** Root of a rising function of the log odds ratio, looked for outward from zero. NaN where there is none within 1e4. */
function logOddsWhere(rising: (logOdds: number) => number): number {
  let [low, high] = [-1, 1];
  while (rising(low) > 0 && low > -1e4) low *= 2;
  while (rising(high) < 0 && high < 1e4) high *= 2;
  return rising(low) > 0 || rising(high) < 0 ? Number.NaN : bracketedRoot(rising, low, high, 1e-14);
}

/** Logarithm of the chance of the counts from `from` to `to` (places in the law), without loss in far tails. */
function logTail({ low, logWeights }: TwoByTwoLaw, logOdds: number, from: number, to: number): number {
  const tilted = logWeights.map((weight, at) => weight + (low + at) * logOdds);
  return logOfSum(tilted.subarray(from, to)) - logOfSum(tilted);
}

/**
 * The odds ratio of k1 of n1 against k2 of n2 given both margins: the w at which the mean of the first cell is the count seen (its conditional
 * maximum likelihood), and the exact interval that leaves `lowerTail` and `upperTail` outside: P(K >= k1; low) = lowerTail and
 * P(K <= k1; high) = upperTail. A tail of 0 leaves that side open.
 * Whole numbers, 0 <= k <= n; tails in [0, 1). Estimate and limits relative 1e-11; 0 or Infinity where the count is the least or the most that
 * the margins allow; NaN for all three where they allow one table only.
 * Source: J. Cornfield (1956), Proc. Third Berkeley Symposium 4, 135-148; A. Agresti (2013), Categorical Data Analysis, section 16.6.
 * @example conditionalOddsRatio(3, 4, 1, 4, 0.025, 0.025).estimate // 6.408309 (R prints it so)
 */
export function conditionalOddsRatio(
  k1: number,
  n1: number,
  k2: number,
  n2: number,
  lowerTail: number,
  upperTail: number,
): { readonly estimate: number; readonly low: number; readonly high: number } {
  const law = twoByTwoLaw(k1, n1, k2, n2);
  if (law.low === law.high) return { estimate: Number.NaN, low: Number.NaN, high: Number.NaN };
  const [isLeast, isMost, at] = [k1 === law.low, k1 === law.high, k1 - law.low];
  const excess = (logOdds: number) =>
    compensatedSum(twoByTwoProbabilities(law, logOdds).map((chance, place) => chance * (place - at)));
  const [open, logLower, logUpper] = [Number.POSITIVE_INFINITY, Math.log(lowerTail), Math.log(upperTail)];
  return {
    estimate: isLeast ? 0 : isMost ? open : Math.exp(logOddsWhere(excess)),
    low:
      isLeast || lowerTail === 0
        ? 0
        : Math.exp(logOddsWhere((logOdds) => logTail(law, logOdds, at, law.logWeights.length) - logLower)),
    high:
      isMost || upperTail === 0
        ? open
        : Math.exp(logOddsWhere((logOdds) => logUpper - logTail(law, logOdds, 0, at + 1))),
  };
}
