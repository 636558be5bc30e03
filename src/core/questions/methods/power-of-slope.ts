import type { Method } from "../../base/index.ts";
import { succeeded } from "../../base/index.ts";
import { standardDeviation } from "../../numerics/index.ts";
import { powerOfT, recordsNeeded } from "../records-needed.ts";
import { completeInputs } from "./complete-inputs.ts";
import { linearFit, ones } from "./linear-fit.ts";
import { sources } from "./sources.ts";

const needs = { rows: 4, distinct: { x: 2 } };

/** How many more instruments a slope would need to be seen, if slope, scatter and spread of x stay as they are. */
export const powerOfSlope: Method = {
  id: "power-slope",
  name: "How many more instruments (slope)",
  answers: "relation",
  needs,
  inputs: {
    x: { kind: "quantities", meaning: "explaining quantity" },
    y: { kind: "quantities", meaning: "explained quantity" },
    target_power: { kind: "number", optional: true, meaning: "wanted power, 0.8 if not given" },
  },
  fields: {
    slope: { meaning: "slope now" },
    sigma: { meaning: "residual standard deviation" },
    sd_x: { meaning: "standard deviation of x" },
    ncp: { meaning: "noncentrality now" },
    power_now: { meaning: "power now" },
    n_needed: { meaning: "records needed in all" },
    more_needed: { meaning: "records more" },
  },
  source: sources.cohen,
  run: (inputs) => {
    const complete = completeInputs(inputs, ["x", "y"], [], needs);
    if (!complete.ok) return complete;
    const { x, y } = complete.value.arrays as { x: Float64Array; y: Float64Array };
    const fit = linearFit([ones(y.length), x], y);
    const ratio = Math.abs(fit.t[1] as number);
    const needed = Number.isFinite(ratio)
      ? recordsNeeded(ratio, x.length, 2, typeof inputs.target_power === "number" ? inputs.target_power : 0.8)
      : null;
    return succeeded({
      slope: fit.coefficients[1],
      sigma: fit.sigma,
      sd_x: standardDeviation(x),
      ncp: ratio,
      power_now: powerOfT(ratio, fit.degreesOfFreedom),
      n_needed: needed,
      more_needed: needed === null ? null : needed - x.length,
    });
  },
};
