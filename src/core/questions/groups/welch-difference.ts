import type { GroupMoments } from "./group-moments.ts";

/** Difference of two group means (first less second), its standard error and Welch's degrees of freedom. NaN where a group has no spread of its own. */
export function welchDifference(
  groups: GroupMoments,
  first: number,
  second: number,
): { difference: number; standardError: number; degreesOfFreedom: number } {
  const part = (group: number) => (groups.variances[group] as number) / (groups.counts[group] as number);
  const [a, b] = [part(first), part(second)];
  const share = (value: number, group: number) => (value * value) / ((groups.counts[group] as number) - 1);
  return {
    difference: (groups.means[first] as number) - (groups.means[second] as number),
    standardError: Math.sqrt(a + b),
    degreesOfFreedom: (a + b) ** 2 / (share(a, first) + share(b, second)),
  };
}
