import { declined, type Method, succeeded } from "../../base/index.ts";
import { midranks, tQuantile } from "../../numerics/index.ts";
import { correlation } from "../fits/correlation.ts";
import { type LinearFit, linearFit, ones } from "../fits/linear-fit.ts";
import { completeInputs } from "../inputs/complete-inputs.ts";
import { kendall } from "../methods/kendall.ts";

const needs = { rows: 4, distinct: { x: 2, y: 2 }, positive: ["x", "y"] };

/** Slope of the first explaining column with its t interval; null where it cannot be told. */
function slopeOf(fit: LinearFit, level: number) {
  const [slope, error] = [fit.coefficients[1] as number, fit.standardErrors[1] as number];
  if (!Number.isFinite(slope) || !Number.isFinite(error)) return null;
  const half = tQuantile((1 + level) / 2, fit.degreesOfFreedom) * error;
  return { slope, error, low: slope - half, high: slope + half, p: fit.p[1] as number, df: fit.degreesOfFreedom };
}

/** The same slope with a third quantity held, and the partial correlation t / sqrt(t^2 + df). */
function slopeGiven(x: Float64Array, y: Float64Array, given: Float64Array, level: number) {
  if (x.length < 5 || !given.every((value) => value > 0)) return null;
  const fit = linearFit([ones(x.length), x, given.map(Math.log)], y);
  const made = fit.rank === 3 && fit.degreesOfFreedom > 0 ? slopeOf(fit, level) : null;
  if (!made || !(made.error > 0)) return null;
  const t = made.slope / made.error;
  return { slope: made.slope, error: made.error, partial: t / Math.sqrt(t * t + made.df) };
}

/**
 * Whether records follow a power law of a stated exponent: the slope of ln y on ln x with its interval, the ranks beside it, and the slope with a
 * third quantity held. Both can be true at once that the interval holds the exponent and that it holds 0: then the records decide nothing.
 * Source: Draper and Smith (1998), chapters 1 and 4; Kendall (1970) for tau-b.
 */
export const ruleInLogs: Method = {
  id: "rule-in-logs",
  name: "A power law against the records, in logarithms",
  answers: "relation",
  needs,
  inputs: {
    x: { kind: "quantities", meaning: "explaining quantity, above zero" },
    y: { kind: "quantities", meaning: "explained quantity, above zero" },
    given: { kind: "quantities", optional: true, meaning: "a third quantity that is held, above zero" },
    exponent: { kind: "number", optional: true, meaning: "exponent of the rule, -1/3 if not given" },
    level: { kind: "number", optional: true, above: 0, below: 1, meaning: "level of the interval, 0.95" },
  },
  fields: {
    n: { meaning: "records used" },
    set_aside: { meaning: "records with a missing value" },
    slope: { meaning: "slope of ln y on ln x" },
    slope_se: { meaning: "its standard error" },
    low: { meaning: "lower end of its t interval" },
    high: { meaning: "upper end" },
    r: { meaning: "correlation of the logarithms" },
    p: { meaning: "two-sided p of slope 0" },
    spearman: { meaning: "rank correlation" },
    tau_b: { meaning: "Kendall's tau-b" },
    slope_given: { meaning: "slope with the third quantity held" },
    slope_given_se: { meaning: "its standard error" },
    partial_r: { meaning: "partial correlation of the logarithms" },
    contains_exponent: { meaning: "whether the interval holds the exponent" },
    contains_zero: { meaning: "whether the interval holds 0" },
    exponent: { meaning: "exponent of the rule" },
  },
  source: { citation: "Draper and Smith (1998), Applied Regression Analysis, chapters 1 and 4", basis: "published" },
  run: (inputs) => {
    const level = inputs.level ?? 0.95;
    const exponent = inputs.exponent ?? -1 / 3;
    if (typeof level !== "number" || !(level > 0 && level < 1))
      return declined("out-of-domain", { name: "level", needed: "a number above 0 and below 1" });
    if (typeof exponent !== "number" || !Number.isFinite(exponent))
      return declined("out-of-domain", { name: "exponent", needed: "a number" });
    const isHeld = inputs.given !== undefined && inputs.given !== null;
    const complete = completeInputs(inputs, isHeld ? ["x", "y", "given"] : ["x", "y"], [], needs);
    if (!complete.ok) return complete;
    const { x, y, given } = complete.value.arrays as { x: Float64Array; y: Float64Array; given?: Float64Array };
    const [logX, logY] = [x.map(Math.log), y.map(Math.log)];
    const made = slopeOf(linearFit([ones(x.length), logX], logY), level);
    if (!made) return declined("not-finite", { name: "the slope" });
    const held = given ? slopeGiven(logX, logY, given, level) : null;
    const ranks = kendall.run({ x: Array.from(x), y: Array.from(y) });
    const contains = (value: number) => made.low <= value && value <= made.high;
    return succeeded({
      n: x.length,
      set_aside: complete.value.setAside,
      slope: made.slope,
      slope_se: made.error,
      low: made.low,
      high: made.high,
      r: correlation(logX, logY),
      p: Number.isFinite(made.p) ? made.p : null,
      spearman: correlation(midranks(x), midranks(y)),
      tau_b: ranks.ok ? ranks.value.tau_b : null,
      slope_given: held?.slope ?? null,
      slope_given_se: held?.error ?? null,
      partial_r: held?.partial ?? null,
      contains_exponent: contains(exponent),
      contains_zero: contains(0),
      exponent,
    });
  },
};
