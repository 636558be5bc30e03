import type { Method } from "../../base/index.ts";
import { tQuantile } from "../../numerics/index.ts";
import { clusterErrors } from "../methods/cluster-errors.ts";
import { clusterRobust } from "../methods/cluster-robust.ts";
import { gamesHowell } from "../methods/games-howell.ts";
import { indicatorColumns } from "../methods/group-columns.ts";
import type { GroupMoments } from "../methods/group-moments.ts";
import { linearFit, ones } from "../methods/linear-fit.ts";
import { oneWayWelch } from "../methods/one-way-welch.ts";
import { pairwiseDifferences } from "../methods/pairwise-differences.ts";
import { welchDifference } from "../methods/welch-difference.ts";
import { welchT } from "../methods/welch-t.ts";
import type { SharedClusters } from "../relation/shared-clusters.ts";

/** Second group less first, in SI, with an interval that holds for all pairs at once. */
export type GroupDifference = {
  readonly first: number;
  readonly second: number;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly standardError: number;
  readonly degreesOfFreedom: number;
};
export type GroupDifferences = {
  readonly method: Method;
  readonly because: string;
  readonly pairs: readonly GroupDifference[];
};

/** Pairs with pieces of one tree counted together (CR2); the level is shared out among the pairs (Bonferroni). null where it cannot be had. */
function clustered(
  y: Float64Array,
  codes: Int32Array,
  groups: number,
  shared: SharedClusters,
): readonly GroupDifference[] | null {
  const pairs: GroupDifference[] = [];
  const level = 0.05 / ((groups * (groups - 1)) / 2);
  const indicators = indicatorColumns(codes, groups);
  for (let first = 0; first < groups; first++) {
    const fit = linearFit([ones(y.length), ...indicators.filter((_, g) => g !== first)], y);
    const errors = clusterErrors(fit, shared.codes, shared.clusters);
    for (let second = first + 1; second < groups; second++) {
      const [value, standardError, degreesOfFreedom] = [
        fit.coefficients[second] as number,
        errors.cr2[second] as number,
        errors.degreesOfFreedom[second] as number,
      ];
      if (!(standardError > 0) || !(degreesOfFreedom > 0.5)) return null;
      const half = standardError * tQuantile(1 - level / 2, degreesOfFreedom);
      pairs.push({ first, second, value, low: value - half, high: value + half, standardError, degreesOfFreedom });
    }
  }
  return pairs;
}

/** Above this many groups the studentized range of every pair takes too long; Bonferroni's intervals are a little wider. */
const MOST_PAIRED = 8;

/** All pairs by Welch, the level shared out among them (Bonferroni). */
function manyPairs(moments: GroupMoments): readonly GroupDifference[] {
  const groups = moments.counts.length;
  const level = 0.05 / ((groups * (groups - 1)) / 2);
  const pairs: GroupDifference[] = [];
  for (let first = 0; first < groups; first++)
    for (let second = first + 1; second < groups; second++) {
      const { difference: value, standardError, degreesOfFreedom } = welchDifference(moments, second, first);
      const half = standardError * tQuantile(1 - level / 2, degreesOfFreedom);
      pairs.push({ first, second, value, low: value - half, high: value + half, standardError, degreesOfFreedom });
    }
  return pairs;
}

/** All differences of group means: by shared pieces where the table says so, by Welch for two groups, by Games and Howell for more. Every group has two records or more. */
export function groupDifferences(
  y: Float64Array,
  codes: Int32Array,
  moments: GroupMoments,
  shared: SharedClusters | null,
): GroupDifferences {
  const groups = moments.counts.length;
  const together = shared ? clustered(y, codes, groups, shared) : null;
  if (shared && together)
    return {
      method: clusterRobust,
      because: `pieces that share a ${shared.column.replaceAll("_", " ")} are not separate evidence`,
      pairs: together,
    };
  if (groups > MOST_PAIRED)
    return {
      method: oneWayWelch,
      because: "there are many groups, so the level is shared out among all pairs",
      pairs: manyPairs(moments),
    };
  if (groups > 2) {
    const pairs = pairwiseDifferences(moments).map(({ difference, ...pair }) => ({ ...pair, value: difference }));
    return { method: gamesHowell, because: "there are several groups, of unequal size and spread", pairs };
  }
  const { difference, standardError, degreesOfFreedom } = welchDifference(moments, 1, 0);
  const half = standardError * tQuantile(0.975, degreesOfFreedom);
  return {
    method: welchT,
    because: "there are two groups, each with its own spread",
    pairs: [
      {
        first: 0,
        second: 1,
        value: difference,
        low: difference - half,
        high: difference + half,
        standardError,
        degreesOfFreedom,
      },
    ],
  };
}
