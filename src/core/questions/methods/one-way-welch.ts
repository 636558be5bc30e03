import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { chiSquareUpperTail, fUpperTail, mean, median } from "../../numerics/index.ts";
import type { GroupMoments } from "../groups/group-moments.ts";
import { groupMoments } from "../groups/group-moments.ts";
import { oneWayAnova, welchAnova } from "../groups/welch-anova.ts";
import { completeInputs, plain } from "../inputs/complete-inputs.ts";
import { groupColumns, orderInput } from "../inputs/group-columns.ts";
import { sources } from "./sources.ts";

const needs = { rows: 3, groups: 2 };
const known = (value: number): number | null => (Number.isFinite(value) ? value : null);

/** Analysis of variance of the distances from each group's centre: do the spreads differ? Source: Levene (1960), Brown and Forsythe (1974). */
export function spreadTest(groups: GroupMoments, centreOf: (values: Float64Array) => number): { F: number; p: number } {
  const distances = groups.values.map((own) => {
    const centre = centreOf(own);
    return own.map((value) => Math.abs(value - centre));
  });
  const codes = Int32Array.from(groups.values.flatMap((own, g) => Array.from(own, () => g)));
  return oneWayAnova(
    groupMoments(Float64Array.from(distances.flatMap((own) => [...own])), codes, groups.counts.length),
  );
}

function bartlett(groups: GroupMoments): { K2: number; p: number } {
  const k = groups.counts.length;
  const free = groups.counts.map((count) => count - 1);
  const df = free.reduce((sum, one) => sum + one, 0);
  const pooled = free.reduce((sum, one, g) => sum + one * (groups.variances[g] as number), 0) / df;
  const above =
    df * Math.log(pooled) - free.reduce((sum, one, g) => sum + one * Math.log(groups.variances[g] as number), 0);
  const K2 = above / (1 + (free.reduce((sum, one) => sum + 1 / one, 0) - 1 / df) / (3 * (k - 1)));
  return { K2, p: K2 >= 0 && Number.isFinite(K2) ? chiSquareUpperTail(K2, k - 1) : Number.NaN };
}

function brownForsytheMeans(groups: GroupMoments, between: number): { F: number; df2: number; p: number } {
  const n = groups.counts.reduce((sum, count) => sum + count, 0);
  const parts = groups.counts.map((count, g) => (1 - count / n) * (groups.variances[g] as number));
  const below = parts.reduce((sum, part) => sum + part, 0);
  const df2 = 1 / parts.reduce((sum, part, g) => sum + (part / below) ** 2 / ((groups.counts[g] as number) - 1), 0);
  const F = between / below;
  return {
    F,
    df2,
    p: Number.isFinite(F) && Number.isFinite(df2) ? fUpperTail(F, groups.counts.length - 1, df2) : Number.NaN,
  };
}

/** Groups of unequal size and spread: Welch's F, beside the usual one, Brown and Forsythe's, and three tests of equal spread. */
export const oneWayWelch: Method = {
  id: "anova-welch",
  name: "Welch's comparison of several groups",
  answers: "comparison",
  needs,
  inputs: {
    value: { kind: "quantities", meaning: "measured quantity" },
    group: { kind: "labels", meaning: "group of each record" },
    group_order: { kind: "labels", optional: true, meaning: "order of the groups; by name unless given" },
  },
  fields: {
    group_order: { meaning: "names of the groups" },
    group_n: { meaning: "records of each" },
    group_mean: { meaning: "mean of each" },
    group_sd: { meaning: "standard deviation of each" },
    F: { meaning: "F with one common spread" },
    df_between: { meaning: "its first degrees of freedom" },
    df_within: { meaning: "its second" },
    ss_between: { meaning: "squares between groups" },
    ss_within: { meaning: "squares within" },
    p: { meaning: "p of F" },
    eta2: { meaning: "share of squares between" },
    omega2: { meaning: "the same without bias" },
    welch_F: { meaning: "Welch's F" },
    welch_df2: { meaning: "its second degrees of freedom" },
    welch_p: { meaning: "its p" },
    bf_F: { meaning: "Brown and Forsythe's F of means" },
    bf_df2: { meaning: "its second degrees of freedom" },
    bf_p: { meaning: "its p" },
    levene_F: { meaning: "equal spread, about means" },
    levene_p: { meaning: "its p" },
    brown_forsythe_spread_F: { meaning: "equal spread, about medians" },
    brown_forsythe_spread_p: { meaning: "its p" },
    bartlett_K2: { meaning: "equal spread, Bartlett" },
    bartlett_p: { meaning: "its p" },
    groups_with_one: { meaning: "groups with one record only, for which Welch's F is withheld" },
    groups_without_spread: { meaning: "groups whose records are all the same, for which it is withheld too" },
  },
  source: sources.welchAnova,
  run: (inputs) => {
    const complete = completeInputs(inputs, ["value"], ["group"], needs);
    if (!complete.ok) return complete;
    const y = complete.value.arrays.value as Float64Array;
    const { names, codes } = groupColumns(complete.value.labels.group ?? [], orderInput(inputs.group_order));
    if (y.length <= names.length) return declined("too-few-records", { have: y.length, need: names.length + 1 });
    const first = y[0] as number;
    const groups = groupMoments(
      y.map((value) => value - first),
      codes,
      names.length,
    );
    const usual = oneWayAnova(groups);
    if (!(usual.between + usual.within > 0)) return declined("no-spread", { column: "value" });
    const [welch, bf, levene, bfSpread, k2] = [
      welchAnova(groups),
      brownForsytheMeans(groups, usual.between),
      spreadTest(groups, mean),
      spreadTest(groups, median),
      bartlett(groups),
    ];
    const total = usual.between + usual.within;
    const square = usual.within / usual.df2;
    return succeeded({
      group_order: names,
      group_n: groups.counts,
      group_mean: groups.means.map((value) => first + value),
      group_sd: plain(groups.variances.map(Math.sqrt)),
      F: known(usual.F),
      df_between: usual.df1,
      df_within: usual.df2,
      ss_between: usual.between,
      ss_within: usual.within,
      p: known(usual.p),
      eta2: known(usual.between / total),
      omega2: known((usual.between - usual.df1 * square) / (total + square)),
      welch_F: known(welch.F),
      welch_df2: known(welch.df2),
      welch_p: known(welch.p),
      bf_F: known(bf.F),
      bf_df2: known(bf.df2),
      bf_p: known(bf.p),
      levene_F: known(levene.F),
      levene_p: known(levene.p),
      brown_forsythe_spread_F: known(bfSpread.F),
      brown_forsythe_spread_p: known(bfSpread.p),
      bartlett_K2: known(k2.K2),
      bartlett_p: known(k2.p),
      groups_with_one: names.filter((_, g) => groups.counts[g] === 1),
      groups_without_spread: names.filter((_, g) => groups.variances[g] === 0),
    });
  },
};
