// Repeatability: how much readings of one and the same thing differ among themselves.
import { compensatedSum, mean } from "../numerics/index.ts";

export type Repeatability = {
  readonly standardDeviation: number;
  readonly degreesOfFreedom: number;
  readonly sets: number;
};

/**
 * Pooled standard deviation of repeats: sqrt(sum (x − mean of its set)² / sum (n of the set − 1)).
 * values: readings or errors, SI; sets: the set of each, by any key. Sets of one do not count. null when nothing was read twice.
 * Source: ISO 5725-2:1994, equation for s_r; JCGM 100:2008, 4.2.4 (pooled estimate).
 */
export function repeatability(values: Float64Array, sets: readonly (string | number)[]): Repeatability | null {
  const bySet = new Map<string | number, number[]>();
  for (const [i, set] of sets.entries()) {
    const members = bySet.get(set) ?? [];
    members.push(values[i] ?? Number.NaN);
    bySet.set(set, members);
  }
  const repeated = [...bySet.values()].filter((members) => members.length > 1);
  const degreesOfFreedom = repeated.reduce((sum, members) => sum + members.length - 1, 0);
  if (degreesOfFreedom === 0) return null;
  const squares = repeated.flatMap((members) => {
    const middle = mean(members);
    return members.map((value) => (value - middle) ** 2);
  });
  return {
    standardDeviation: Math.sqrt(compensatedSum(squares) / degreesOfFreedom),
    degreesOfFreedom,
    sets: repeated.length,
  };
}
