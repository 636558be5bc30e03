import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { agreementLimits } from "../agreement/agreement-limits.ts";
import { completeInputs } from "../inputs/complete-inputs.ts";
import { levelFrom, levelInput } from "../inputs/level-input.ts";
import { sources } from "./sources.ts";

const needs = { rows: 3 };
const known = (value: number | undefined): number | null =>
  value !== undefined && Number.isFinite(value) ? value : null;

/** Two ways of measuring the same pieces: mean difference and the limits that hold 95 % of the differences, with their intervals. */
export const blandAltman: Method = {
  id: "bland-altman",
  name: "Limits of agreement",
  answers: "agreement",
  needs,
  inputs: {
    a: { kind: "quantities", meaning: "first reading of each piece" },
    b: { kind: "quantities", meaning: "second reading of each piece" },
    level: levelInput,
    multiplier: {
      kind: "number",
      optional: true,
      above: 0,
      meaning: "standard deviations to a limit; 1.96 (95 % of a normal law) unless given",
    },
  },
  fields: {
    bias: { meaning: "mean of a - b" },
    sd: { meaning: "standard deviation of the differences" },
    limit_low: { meaning: "lower limit of agreement" },
    limit_high: { meaning: "upper" },
    bias_ci_low: { meaning: "interval of the bias at the level, lower" },
    bias_ci_high: { meaning: "upper" },
    limit_se: { meaning: "standard error of a limit" },
    limit_low_ci_low: { meaning: "interval of the lower limit, lower" },
    limit_low_ci_high: { meaning: "upper" },
    limit_high_ci_low: { meaning: "interval of the upper limit, lower" },
    limit_high_ci_high: { meaning: "upper" },
    proportional_slope: { meaning: "slope of difference on mean" },
    proportional_p: { meaning: "its two-sided p" },
    limit_low_multiplier2: { meaning: "lower limit with two standard deviations" },
    limit_high_multiplier2: { meaning: "upper" },
  },
  source: sources.blandAltman,
  run: (inputs) => {
    const complete = completeInputs(inputs, ["a", "b"], [], needs);
    if (!complete.ok) return complete;
    const level = levelFrom(inputs);
    if (!level.ok) return level;
    const { multiplier } = inputs;
    const limits = agreementLimits(complete.value.arrays.a as Float64Array, complete.value.arrays.b as Float64Array, {
      level: level.value,
      ...(typeof multiplier === "number" ? { multiplier } : {}),
    });
    if (!Number.isFinite(limits.sd)) return declined("too-large", { name: "a", most: "1e150" });
    const { bias, sd, low, high, biasHalf, limitHalf, limitError, trend } = limits;
    return succeeded({
      bias,
      sd,
      limit_low: low,
      limit_high: high,
      bias_ci_low: bias - biasHalf,
      bias_ci_high: bias + biasHalf,
      limit_se: limitError,
      limit_low_ci_low: low - limitHalf,
      limit_low_ci_high: low + limitHalf,
      limit_high_ci_low: high - limitHalf,
      limit_high_ci_high: high + limitHalf,
      proportional_slope: known(trend?.coefficients[1]),
      proportional_p: known(trend?.p[1]),
      limit_low_multiplier2: bias - 2 * sd,
      limit_high_multiplier2: bias + 2 * sd,
    });
  },
};
