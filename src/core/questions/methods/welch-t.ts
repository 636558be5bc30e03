import type { Method } from "../../base/index.ts";
import { succeeded } from "../../base/index.ts";
import { tQuantile, tTwoSided } from "../../numerics/index.ts";
import { meanDifference } from "../groups/mean-difference.ts";
import { levelFrom, levelInput } from "../inputs/level-input.ts";
import { twoSamples } from "../inputs/two-samples.ts";
import { sources } from "./sources.ts";

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
    const [level, samples] = [levelFrom(inputs), twoSamples(inputs, 2)];
    if (!level.ok) return level;
    if (!samples.ok) return samples;
    const found = meanDifference(samples.value);
    if (!found.ok) return found;
    const { difference, standardError: se, degreesOfFreedom: df, pooledError: pooled } = found.value;
    const upper = (1 + level.value) / 2;
    const pooledDf = samples.value.a.length + samples.value.b.length - 2;
    const [half, pooledHalf] = [se * tQuantile(upper, df), pooled * tQuantile(upper, pooledDf)];
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
