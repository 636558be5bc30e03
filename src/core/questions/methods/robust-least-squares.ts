import type { Method } from "../../base/index.ts";
import { succeeded } from "../../base/index.ts";
import { tQuantile, tTwoSided } from "../../numerics/index.ts";
import { completeInputs, plain } from "./complete-inputs.ts";
import { linearFit, ones } from "./linear-fit.ts";
import { robustErrors } from "./robust-errors.ts";
import { sources } from "./sources.ts";

const needs = { rows: 4, distinct: { x: 2 } };

/** Least squares whose interval allows for an unequal scatter (HC0 to HC3), t with n - p degrees of freedom. */
export const robustLeastSquares: Method = {
  id: "robust-se",
  name: "Least squares with errors for unequal scatter (HC3)",
  answers: "relation",
  needs,
  inputs: {
    x: { kind: "quantities", meaning: "explaining quantity" },
    y: { kind: "quantities", meaning: "explained quantity" },
  },
  fields: {
    coef: { meaning: "constant and slope" },
    se_hc0: { meaning: "standard errors, HC0" },
    se_hc1: { meaning: "HC1" },
    se_hc2: { meaning: "HC2" },
    se_hc3: { meaning: "HC3" },
    ci95_low_hc3: { meaning: "lower ends of the 95 % intervals" },
    ci95_high_hc3: { meaning: "upper ends" },
    p_hc3: { meaning: "two-sided p" },
  },
  source: sources.mackinnonWhite,
  run: (inputs) => {
    const complete = completeInputs(inputs, ["x", "y"], [], needs);
    if (!complete.ok) return complete;
    const { x, y } = complete.value.arrays as { x: Float64Array; y: Float64Array };
    const fit = linearFit([ones(y.length), x], y);
    const se = robustErrors(fit, "hc3");
    const multiple = tQuantile(0.975, fit.degreesOfFreedom);
    return succeeded({
      coef: plain(fit.coefficients),
      se_hc0: plain(robustErrors(fit, "hc0")),
      se_hc1: plain(robustErrors(fit, "hc1")),
      se_hc2: plain(robustErrors(fit, "hc2")),
      se_hc3: plain(se),
      ci95_low_hc3: plain(fit.coefficients.map((b, j) => b - multiple * (se[j] as number))),
      ci95_high_hc3: plain(fit.coefficients.map((b, j) => b + multiple * (se[j] as number))),
      p_hc3: plain(fit.coefficients.map((b, j) => tTwoSided(b / (se[j] as number), fit.degreesOfFreedom))),
    });
  },
};
