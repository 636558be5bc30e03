import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { mean, tTwoSided } from "../../numerics/index.ts";
import { fitAt, linearFit, ones } from "../fits/linear-fit.ts";
import { levelInput } from "../inputs/level-input.ts";
import { pairedRecords } from "../inputs/paired-records.ts";
import { sources } from "./sources.ts";

const needs = { rows: 3, distinct: { x: 2 }, positive: ["x", "y"] };

/** y = c x^k, fitted as log y on log x. The exponent is tested against -1/3, which plates of one stiffness follow (thickness cubed). */
export const powerLaw: Method = {
  id: "power-law",
  name: "Power law by least squares of logarithms",
  answers: "relation",
  needs,
  inputs: {
    x: { kind: "quantities", meaning: "explaining quantity, above zero" },
    y: { kind: "quantities", meaning: "explained quantity, above zero" },
    null_exponent: { kind: "number", optional: true, meaning: "exponent to test against, -1/3 if not given" },
    level: levelInput,
    predict_at: { kind: "quantities", optional: true, meaning: "values of x to predict at, above zero" },
  },
  fields: {
    exponent: { meaning: "exponent k" },
    se: { meaning: "its standard error" },
    ci95_low: { meaning: "interval, lower" },
    ci95_high: { meaning: "upper" },
    log_constant: { meaning: "log c" },
    constant: { meaning: "c" },
    t_against_null: { meaning: "t against the null exponent" },
    p_against_null: { meaning: "its two-sided p" },
    df: { meaning: "degrees of freedom" },
    sigma_log: { meaning: "residual standard deviation of log y" },
    smearing: { meaning: "factor from median to mean (Duan)" },
    fit: { meaning: "median at predict_at" },
    pred_low: { meaning: "interval of a next record, lower" },
    pred_high: { meaning: "upper" },
  },
  source: sources.duan,
  run: (inputs) => {
    const pair = pairedRecords(inputs, needs);
    if (!pair.ok) return pair;
    const { x, y, level } = pair.value;
    const fit = linearFit([ones(y.length), x.map(Math.log)], y.map(Math.log), undefined, level);
    const [constant, exponent] = [fit.coefficients[0] as number, fit.coefficients[1] as number];
    const against = typeof inputs.null_exponent === "number" ? inputs.null_exponent : -1 / 3;
    const t = (exponent - against) / (fit.standardErrors[1] as number);
    const asked: readonly number[] = Array.isArray(inputs.predict_at) ? inputs.predict_at.map(Number) : [];
    if (!asked.every((at) => at > 0))
      return declined("out-of-domain", { name: "predict_at", needed: "values above zero" });
    const places = asked.map((at) => fitAt(fit, [1, Math.log(at)]));
    return succeeded({
      exponent,
      se: fit.standardErrors[1],
      ci95_low: fit.low[1],
      ci95_high: fit.high[1],
      log_constant: constant,
      constant: Math.exp(constant),
      t_against_null: t,
      p_against_null: tTwoSided(t, fit.degreesOfFreedom),
      df: fit.degreesOfFreedom,
      sigma_log: fit.sigma,
      smearing: mean(fit.residuals.map(Math.exp)),
      fit: places.map((place) => Math.exp(place.fit)),
      pred_low: places.map((place) => Math.exp(place.nextLow)),
      pred_high: places.map((place) => Math.exp(place.nextHigh)),
    });
  },
};
