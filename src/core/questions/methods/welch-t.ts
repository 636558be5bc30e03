import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { tQuantile, tTwoSided } from "../../numerics/index.ts";
import { groupMoments } from "../groups/group-moments.ts";
import { welchDifference } from "../groups/welch-difference.ts";
import { levelFrom, levelInput } from "../inputs/level-input.ts";
import { sources } from "./sources.ts";

const listed = (value: unknown): Float64Array =>
  Array.isArray(value) || value instanceof Float64Array
    ? Float64Array.from(value as readonly number[]).filter((one) => !Number.isNaN(one))
    : new Float64Array();

/** Two groups, each with its own spread: difference of means with its interval. The pooled test stands beside it. */
export const welchT: Method = {
  id: "welch-t",
  name: "Welch's comparison of two groups",
  answers: "comparison",
  needs: { rows: 4, groups: 2 },
  inputs: {
    a: { kind: "quantities", meaning: "values of the first group" },
    b: { kind: "quantities", meaning: "values of the second group" },
    level: levelInput,
  },
  fields: {
    difference: { meaning: "mean of a less mean of b" },
    se: { meaning: "its standard error" },
    t: { meaning: "difference over standard error" },
    df: { meaning: "Welch's degrees of freedom" },
    p: { meaning: "two-sided p" },
    ci95_low: { meaning: "95 % interval, lower" },
    ci95_high: { meaning: "upper" },
    pooled_t: { meaning: "t with one common spread" },
    pooled_df: { meaning: "its degrees of freedom" },
    pooled_p: { meaning: "its p" },
    pooled_ci95_low: { meaning: "its interval, lower" },
    pooled_ci95_high: { meaning: "upper" },
  },
  source: sources.welch,
  run: (inputs) => {
    const level = levelFrom(inputs);
    if (!level.ok) return level;
    const upper = (1 + level.value) / 2;
    const [a, b] = [listed(inputs.a), listed(inputs.b)];
    const all = Float64Array.from([...a, ...b]);
    if (!all.every(Number.isFinite)) return declined("not-finite", { name: "a reading" });
    if (Math.min(a.length, b.length) < 2)
      return declined("too-few-records", { have: Math.min(a.length, b.length), need: 2 });
    const first = all[0] as number;
    const groups = groupMoments(
      all.map((value) => value - first),
      Int32Array.from(all, (_, i) => (i < a.length ? 0 : 1)),
      2,
    );
    const { difference, standardError: se, degreesOfFreedom: df } = welchDifference(groups, 0, 1);
    if (!(se > 0)) return declined("no-spread", { column: "values" });
    const half = se * tQuantile(upper, df);
    const pooledDf = all.length - 2;
    const within = (groups.variances[0] as number) * (a.length - 1) + (groups.variances[1] as number) * (b.length - 1);
    const pooled = Math.sqrt((within / pooledDf) * (1 / a.length + 1 / b.length));
    const pooledHalf = pooled * tQuantile(upper, pooledDf);
    return succeeded({
      difference,
      se,
      t: difference / se,
      df,
      p: tTwoSided(difference / se, df),
      ci95_low: difference - half,
      ci95_high: difference + half,
      pooled_t: difference / pooled,
      pooled_df: pooledDf,
      pooled_p: tTwoSided(difference / pooled, pooledDf),
      pooled_ci95_low: difference - pooledHalf,
      pooled_ci95_high: difference + pooledHalf,
    });
  },
};
