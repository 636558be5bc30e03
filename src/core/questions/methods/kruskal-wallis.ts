import type { Method } from "../../base/index.ts";
import { declined, power, succeeded } from "../../base/index.ts";
import { chiSquareUpperTail, midranks } from "../../numerics/index.ts";
import { completeInputs } from "../inputs/complete-inputs.ts";
import { groupColumns } from "../inputs/group-columns.ts";
import { sources } from "./sources.ts";

/** Kruskal and Wallis's H with its correction for ties: do the ranks of the groups differ? NaN when all values are equal. */
export function rankTest(
  y: Float64Array,
  codes: Int32Array,
  groups: number,
): { H: number; df: number; p: number; epsilonSquared: number } {
  const n = y.length;
  const ranks = midranks(y);
  const sums = new Float64Array(groups);
  const counts = new Float64Array(groups);
  codes.forEach((code, i) => {
    sums[code] = (sums[code] as number) + (ranks[i] as number);
    counts[code] = (counts[code] as number) + 1;
  });
  const ties = new Map<number, number>();
  for (const value of y) ties.set(value, (ties.get(value) ?? 0) + 1);
  const tied = [...ties.values()].reduce((sum, t) => sum + power(t, 3) - t, 0);
  const plain =
    (12 / (n * (n + 1))) *
    sums.reduce((sum, s, g) => sum + (counts[g] as number) * (s / (counts[g] as number) - (n + 1) / 2) ** 2, 0);
  const H = plain / (1 - tied / (power(n, 3) - n));
  return {
    H,
    df: groups - 1,
    p: Number.isFinite(H) ? chiSquareUpperTail(H, groups - 1) : Number.NaN,
    epsilonSquared: H / ((n * n - 1) / (n + 1)),
  };
}

const needs = { rows: 3, groups: 2 };

/** Grades across groups by their ranks. */
export const kruskalWallis: Method = {
  id: "kruskal-wallis",
  name: "Comparison of groups by ranks",
  answers: "comparison",
  needs,
  inputs: {
    value: { kind: "quantities", meaning: "grades or values" },
    group: { kind: "labels", meaning: "group of each record" },
  },
  fields: {
    H: { meaning: "tie-corrected H" },
    df: { meaning: "its degrees of freedom" },
    p: { meaning: "its p by chi-square" },
    epsilon2: { meaning: "share of the rank scatter between groups" },
  },
  source: sources.kruskalWallis,
  run: (inputs) => {
    const complete = completeInputs(inputs, ["value"], ["group"], needs);
    if (!complete.ok) return complete;
    const y = complete.value.arrays.value as Float64Array;
    const { names, codes } = groupColumns(complete.value.labels.group ?? []);
    const test = rankTest(y, codes, names.length);
    if (!Number.isFinite(test.H)) return declined("no-spread", { column: "value" });
    return succeeded({ H: test.H, df: test.df, p: test.p, epsilon2: test.epsilonSquared });
  },
};
