import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { standardDeviation, sumOfSquares } from "../../numerics/index.ts";
import { linearFit, ones } from "../fits/linear-fit.ts";
import { completeInputs } from "../inputs/complete-inputs.ts";
import { numberInputs } from "../inputs/number-input.ts";
import { powerOfT, recordsNeeded } from "../records-needed.ts";
import { sources } from "./sources.ts";

const needs = { rows: 4, distinct: { x: 2, y: 2 } };

/** How many more instruments a slope would need to be seen, if slope, scatter and spread of x stay as they are. */
export const powerOfSlope: Method = {
  id: "power-slope",
  name: "How many more instruments (slope)",
  answers: "relation",
  needs,
  inputs: {
    x: { kind: "quantities", meaning: "explaining quantity" },
    y: { kind: "quantities", meaning: "explained quantity" },
    alpha: { kind: "number", above: 0, below: 1, optional: true, meaning: "level of the test, 0.05 unless given" },
    target_power: { kind: "number", above: 0, below: 1, optional: true, meaning: "wanted power, 0.8 unless given" },
  },
  fields: {
    slope: { meaning: "slope now" },
    sigma: { meaning: "residual standard deviation" },
    sd_x: { meaning: "standard deviation of x" },
    ncp: { meaning: "noncentrality now" },
    power_now: { meaning: "power now" },
    n_needed: { meaning: "records needed in all, at least those that there are; withheld where 100,000 would not do" },
    more_needed: { meaning: "records more" },
  },
  source: sources.cohen,
  run: (inputs) => {
    const complete = completeInputs(inputs, ["x", "y"], [], needs);
    if (!complete.ok) return complete;
    const { x, y } = complete.value.arrays as { x: Float64Array; y: Float64Array };
    const given = numberInputs(inputs, {
      alpha: { above: 0, below: 1, otherwise: 0.05 },
      target_power: { above: 0, below: 1, otherwise: 0.8 },
    });
    if (!given.ok) return given;
    const { alpha, target_power: target } = given.value;
    const fit = linearFit([ones(y.length), x], y);
    const ratio = Math.abs(fit.t[1] as number);
    if (!(fit.residualSumOfSquares > 1e-20 * sumOfSquares(y)) || !Number.isFinite(ratio))
      return declined("perfect-fit", { column: "y" });
    const needed = recordsNeeded(ratio, x.length, 2, target, alpha);
    return succeeded({
      slope: fit.coefficients[1],
      sigma: fit.sigma,
      sd_x: standardDeviation(x),
      ncp: ratio,
      power_now: powerOfT(ratio, fit.degreesOfFreedom, alpha),
      n_needed: needed,
      more_needed: needed === null ? null : needed - x.length,
    });
  },
};
