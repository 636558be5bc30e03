import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { mean, standardDeviation, tLowerTail, tQuantile, tTwoSided, tUpperTail } from "../../numerics/index.ts";
import { alternativeFrom, alternativeInput, tailsOf } from "../counts/alternative-input.ts";
import { completeInputs } from "../inputs/complete-inputs.ts";
import { knownNumber } from "../inputs/known-number.ts";
import { levelFrom, levelInput } from "../inputs/level-input.ts";

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
    alternative: alternativeInput,
    null_value: { kind: "quantity", optional: true, meaning: "mean difference to test against, 0 unless given" },
  },
  fields: {
    difference: { meaning: "mean of a less b" },
    sd: { meaning: "standard deviation of the differences" },
    se: { meaning: "standard error of their mean" },
    t: { meaning: "difference less the null value, over its standard error" },
    df: { meaning: "degrees of freedom" },
    p: { meaning: "p on the side or sides looked at" },
    ci95_low: { meaning: "interval, lower; null where it is open" },
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
    // Differences that are equal but for the rounding of a and b.
    const size = a.reduce((most, value, at) => Math.max(most, Math.abs(value), Math.abs(b[at] as number)), 0);
    if (!(sd > 4 * Number.EPSILON * size)) return declined("no-spread", { column: "difference" });
    const { null_value: nullValue = 0 } = inputs;
    if (typeof nullValue !== "number" || !Number.isFinite(nullValue))
      return declined("out-of-domain", { name: "null_value", needed: "a number" });
    const alternative = alternativeFrom(inputs);
    const [lower, upper] = tailsOf(alternative, level.value);
    const t = (difference - nullValue) / se;
    const tail = { "two-sided": tTwoSided, greater: tUpperTail, less: tLowerTail }[alternative];
    return succeeded({
      difference,
      sd,
      se,
      t,
      df,
      p: tail(t, df),
      ci95_low: knownNumber(lower > 0 ? difference + se * tQuantile(lower, df) : Number.NaN),
      ci95_high: knownNumber(upper > 0 ? difference - se * tQuantile(upper, df) : Number.NaN),
      set_aside: complete.value.setAside,
    });
  },
};
