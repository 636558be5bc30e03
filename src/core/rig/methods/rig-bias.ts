// Bias: readings of one reference value.
import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { mean, standardDeviation, tQuantile, tTwoSided } from "../../numerics/index.ts";
import { inputNumbers } from "./input-numbers.ts";

/**
 * Mean of reading − reference with its t interval: bias ± t(0.975, n − 1) s / sqrt(n).
 * reading: at least two; reference: one value or one for each reading. Refuses readings that are all equally off.
 * Source: Student's one-sample interval; ISO 5725-6:1994, 7.2 (bias against an accepted reference value).
 */
export const rigBias: Method = {
  id: "rig-bias",
  name: "Bias against a reference value",
  answers: "rig",
  needs: { rows: 2 },
  inputs: {
    reading: { kind: "quantities", meaning: "what the rig read" },
    reference: { kind: "quantities", meaning: "the true value: one, or one for each reading" },
    level: { kind: "number", optional: true, above: 0, below: 1, meaning: "level of the interval, 0.95" },
  },
  fields: {
    bias: { meaning: "mean of reading minus reference" },
    sd: { meaning: "standard deviation of the errors" },
    se: { meaning: "standard error of the bias" },
    t: { meaning: "bias over its standard error" },
    df: { meaning: "degrees of freedom" },
    p: { meaning: "two-sided tail probability of t" },
    ci95_low: { meaning: "lower end of the interval" },
    ci95_high: { meaning: "upper end of the interval" },
  },
  source: { citation: "ISO 5725-6:1994, 7.2; Student's one-sample interval", basis: "standard" },
  run: (inputs) => {
    const [readings, references] = [inputNumbers(inputs.reading), inputNumbers(inputs.reference)];
    if (references.length !== 1 && references.length !== readings.length)
      return declined("out-of-domain", { name: "reference", needed: "one value, or a list as long as the readings" });
    if ([...readings, ...references].some((value) => Math.abs(value) === Number.POSITIVE_INFINITY))
      return declined("not-finite", { name: "reading" });
    const single = references.length === 1 ? (references[0] as number) : null;
    const errors = readings.map((value, i) => value - (single ?? references[i] ?? Number.NaN)).filter(Number.isFinite);
    if (errors.length < 2) return declined("too-few-records", { have: errors.length, need: 2 });
    const [bias, sd] = [mean(errors), standardDeviation(errors)];
    if (!(sd > 0)) return declined("perfect-fit", { column: "reading" });
    const df = errors.length - 1;
    const se = sd / Math.sqrt(errors.length);
    const half = se * tQuantile((1 + (typeof inputs.level === "number" ? inputs.level : 0.95)) / 2, df);
    return succeeded({
      bias,
      sd,
      se,
      t: bias / se,
      df,
      p: tTwoSided(bias / se, df),
      ci95_low: bias - half,
      ci95_high: bias + half,
    });
  },
};
