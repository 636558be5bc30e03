import type { Method, Outcome } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { tQuantile } from "../../numerics/index.ts";
import { askedByName } from "../asked-by-name.ts";
import { clusterErrors } from "../fits/cluster-errors.ts";
import { linearFit, ones } from "../fits/linear-fit.ts";
import type { GroupMoments } from "../groups/group-moments.ts";
import { pairwiseDifferences } from "../groups/pairwise-differences.ts";
import { welchDifference } from "../groups/welch-difference.ts";
import { indicatorColumns } from "../inputs/group-columns.ts";
import { clusterRobust } from "../methods/cluster-robust.ts";
import { gamesHowell } from "../methods/games-howell.ts";
import { oneWayWelch } from "../methods/one-way-welch.ts";
import { welchT } from "../methods/welch-t.ts";
import type { SharedClusters } from "../shared-clusters.ts";

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

type Compared = {
  readonly y: Float64Array;
  readonly codes: Int32Array;
  readonly moments: GroupMoments;
  readonly shared: SharedClusters | null;
};
/** One way to all pairs; null where these records do not allow it, and `needs` says what would. */
type Way = {
  readonly method: Method;
  readonly needs: string;
  readonly pairs: (compared: Compared) => readonly GroupDifference[] | null;
};

const ways: readonly Way[] = [
  {
    method: clusterRobust,
    needs: "a table that says what its pieces share, several of them in each group",
    pairs: ({ y, codes, moments, shared }) => (shared ? clustered(y, codes, moments.counts.length, shared) : null),
  },
  {
    method: oneWayWelch,
    needs: "two groups or more",
    pairs: ({ moments }) => manyPairs(moments),
  },
  {
    method: gamesHowell,
    needs: `at most ${MOST_PAIRED} groups`,
    pairs: ({ moments }) =>
      moments.counts.length <= MOST_PAIRED
        ? pairwiseDifferences(moments).map(({ difference, ...pair }) => ({ ...pair, value: difference }))
        : null,
  },
  {
    method: welchT,
    needs: "two groups",
    pairs: ({ moments }) => (moments.counts.length === 2 ? manyPairs(moments) : null),
  },
];
const wayOf = new Map(ways.map((way) => [way.method.id, way]));

/** The ids of the ways, for a question that names one. */
export const groupDifferenceMethods: readonly string[] = [...wayOf.keys()];

/** What is tried where no method is named, surest first: shared pieces, then Welch for two groups, Games and Howell for more, Bonferroni for many. */
const preferred = (
  groups: number,
  shared: SharedClusters | null,
): readonly (readonly [id: string, because: string])[] => [
  ...(shared
    ? [
        [
          "cluster-robust",
          `pieces that share a ${shared.column.replaceAll("_", " ")} are not separate evidence`,
        ] as const,
      ]
    : []),
  groups === 2
    ? ["welch-t", "there are two groups, each with its own spread"]
    : groups <= MOST_PAIRED
      ? ["games-howell", "there are several groups, of unequal size and spread"]
      : ["anova-welch", "there are many groups, so the level is shared out among all pairs"],
];

/**
 * All differences of group means, with intervals that hold for all pairs at once, by the method named or else the honest one for these records.
 * Every group has two records or more. Refuses a named method that these records do not allow.
 */
export function groupDifferences(compared: Compared, by: string | null): Outcome<GroupDifferences> {
  const tried = by === null ? preferred(compared.moments.counts.length, compared.shared) : [[by, askedByName] as const];
  for (const [id, because] of tried) {
    const way = wayOf.get(id);
    const pairs = way?.pairs(compared);
    if (way && pairs) return succeeded({ method: way.method, because, pairs });
  }
  const named = wayOf.get(by ?? "");
  return declined("out-of-domain", {
    name: by ?? "the comparison",
    needed: named?.needs ?? `one of the methods ${groupDifferenceMethods.join(", ")}`,
  });
}
