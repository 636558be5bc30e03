import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { mean, standardDeviation, tQuantile, tTwoSided } from "../../numerics/index.ts";
import { completeInputs } from "./complete-inputs.ts";
import { levelFrom, levelInput } from "./level-input.ts";

/** The same pieces measured twice: mean difference with its interval. */
export const pairedT: Method = {
  id: "paired-t",
  name: "Paired differences",
  answers: "comparison",
  needs: { rows: 2 },
  inputs: {
    a: { kind: "quantities", meaning: "first value of each piece" },
    b: { kind: "quantities", meaning: "second value of the same piece" },
    level: levelInput,
  },
  fields: {
    difference: { meaning: "mean of a less b" },
    sd: { meaning: "standard deviation of the differences" },
    se: { meaning: "standard error of their mean" },
    t: { meaning: "difference over standard error" },
    df: { meaning: "degrees of freedom" },
    p: { meaning: "two-sided p" },
    ci95_low: { meaning: "interval, lower" },
    ci95_high: { meaning: "upper" },
    set_aside: { meaning: "records without both values" },
  },
  source: { citation: "Student (1908), Biometrika 6, 1-25", basis: "published" },
  run: (inputs) => {
    const level = levelFrom(inputs);
    if (!level.ok) return level;
    const complete = completeInputs(inputs, ["a", "b"], [], { rows: 2 });
    if (!complete.ok) return complete;
    const { a, b } = complete.value.arrays as { a: Float64Array; b: Float64Array };
    const differences = a.map((value, at) => value - (b[at] as number));
    const [difference, sd, df] = [mean(differences), standardDeviation(differences), a.length - 1];
    if (!Number.isFinite(sd)) return declined("not-finite", { name: "the difference" });
    const se = sd / Math.sqrt(a.length);
    if (!(se > 0)) return declined("no-spread", { column: "the difference" });
    const half = se * tQuantile((1 + level.value) / 2, df);
    return succeeded({
      difference,
      sd,
      se,
      t: difference / se,
      df,
      p: tTwoSided(difference / se, df),
      ci95_low: difference - half,
      ci95_high: difference + half,
      set_aside: complete.value.setAside,
    });
  },
};
