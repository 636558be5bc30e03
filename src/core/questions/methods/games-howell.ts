import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { rangeTail, studentizedRangeQuantile, studentizedRangeUpperTail } from "../../numerics/index.ts";
import { groupMoments } from "../groups/group-moments.ts";
import { pairwiseDifferences } from "../groups/pairwise-differences.ts";
import { oneWayAnova } from "../groups/welch-anova.ts";
import { completeInputs } from "../inputs/complete-inputs.ts";
import { groupColumns, orderInput } from "../inputs/group-columns.ts";
import { levelFrom, levelInput } from "../inputs/level-input.ts";
import { sources } from "./sources.ts";

const needs = { rows: 4, groups: 2 };

/** Every pair of groups with intervals that hold together, each group with its own spread (Games–Howell); Tukey–Kramer with a common spread beside it. */
export const gamesHowell: Method = {
  id: "games-howell",
  name: "All pairs of groups (Games–Howell)",
  answers: "comparison",
  needs,
  inputs: {
    value: { kind: "quantities", meaning: "measured quantity" },
    group: { kind: "labels", meaning: "group of each record" },
    level: levelInput,
    group_order: { kind: "labels", optional: true, meaning: "order of the groups; by name unless given" },
  },
  fields: {
    pairs: { meaning: "the pairs, first | second" },
    difference: { meaning: "second mean less first" },
    gh_se: { meaning: "standard error of the difference" },
    gh_df: { meaning: "Welch's degrees of freedom" },
    gh_p: { meaning: "p adjusted for all pairs" },
    gh_low: { meaning: "intervals for all pairs at once at the level, lower" },
    gh_high: { meaning: "upper" },
    tukey_p: { meaning: "p with a common spread" },
    tukey_low: { meaning: "its intervals, lower" },
    tukey_high: { meaning: "upper" },
  },
  source: sources.gamesHowell,
  run: (inputs) => {
    const complete = completeInputs(inputs, ["value"], ["group"], needs);
    if (!complete.ok) return complete;
    const level = levelFrom(inputs);
    if (!level.ok) return level;
    const y = complete.value.arrays.value as Float64Array;
    const { names, codes } = groupColumns(complete.value.labels.group ?? [], orderInput(inputs.group_order));
    const first = y[0] as number;
    const groups = groupMoments(
      y.map((value) => value - first),
      codes,
      names.length,
    );
    if (groups.counts.some((count) => count < 2)) return declined("too-few-records", { have: 1, need: 2 });
    if (groups.variances.filter((value) => value === 0).length > 1) return declined("no-spread", { column: "value" });
    const pairs = pairwiseDifferences(groups, level.value);
    const usual = oneWayAnova(groups);
    const tail = rangeTail(names.length);
    const critical = studentizedRangeQuantile(level.value, names.length, usual.df2, tail);
    const tukey = pairs.map(({ first, second, difference }) => {
      const se = Math.sqrt(
        ((usual.within / usual.df2) * (1 / (groups.counts[first] as number) + 1 / (groups.counts[second] as number))) /
          2,
      );
      return {
        p: studentizedRangeUpperTail(Math.abs(difference) / se, names.length, usual.df2, tail),
        low: difference - critical * se,
        high: difference + critical * se,
      };
    });
    return succeeded({
      pairs: pairs.map(({ first, second }) => `${names[first]} | ${names[second]}`),
      difference: pairs.map((pair) => pair.difference),
      gh_se: pairs.map((pair) => pair.standardError),
      gh_df: pairs.map((pair) => pair.degreesOfFreedom),
      gh_p: pairs.map((pair) =>
        studentizedRangeUpperTail(
          (Math.abs(pair.difference) * Math.SQRT2) / pair.standardError,
          names.length,
          pair.degreesOfFreedom,
          tail,
        ),
      ),
      gh_low: pairs.map((pair) => pair.low),
      gh_high: pairs.map((pair) => pair.high),
      tukey_p: tukey.map((pair) => pair.p),
      tukey_low: tukey.map((pair) => pair.low),
      tukey_high: tukey.map((pair) => pair.high),
    });
  },
};
