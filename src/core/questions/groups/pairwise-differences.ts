import { rangeTail, studentizedRangeQuantile } from "../../numerics/index.ts";
import type { GroupMoments } from "./group-moments.ts";
import { welchDifference } from "./welch-difference.ts";

/** Second group less first, with the interval that holds for all pairs at once. */
export type PairDifference = {
  readonly first: number;
  readonly second: number;
  readonly difference: number;
  readonly standardError: number;
  readonly degreesOfFreedom: number;
  readonly low: number;
  readonly high: number;
};

/** All pairs by Games and Howell: Welch's standard error and degrees of freedom, the studentized range for the number of groups. */
export function pairwiseDifferences(groups: GroupMoments, level = 0.95): readonly PairDifference[] {
  const k = groups.counts.length;
  const tail = rangeTail(k);
  const pairs: PairDifference[] = [];
  for (let first = 0; first < k; first++)
    for (let second = first + 1; second < k; second++) {
      const { difference, standardError, degreesOfFreedom } = welchDifference(groups, second, first);
      const half = (studentizedRangeQuantile(level, k, degreesOfFreedom, tail) * standardError) / Math.SQRT2;
      pairs.push({
        first,
        second,
        difference,
        standardError,
        degreesOfFreedom,
        low: difference - half,
        high: difference + half,
      });
    }
  return pairs;
}
