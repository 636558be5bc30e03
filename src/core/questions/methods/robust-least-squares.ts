import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { sumOfSquares, tQuantile, tTwoSided } from "../../numerics/index.ts";
import { robustErrors } from "../fits/robust-errors.ts";
import { plain } from "../inputs/complete-inputs.ts";
import { explainedBy, explainedByInputs, fitOf } from "../inputs/explained-by.ts";
import { levelFrom, levelInput } from "../inputs/level-input.ts";
import { sources } from "./sources.ts";

/** Least squares whose interval allows for an unequal scatter (HC0 to HC3), t with n - p degrees of freedom. */
export const robustLeastSquares: Method = {
  id: "robust-se",
  name: "Least squares with errors for unequal scatter (HC3)",
  answers: "relation",
  needs: { rows: 4 },
  inputs: {
    ...explainedByInputs,
    level: levelInput,
  },
  fields: {
    coef: { meaning: "constant and slopes" },
    se_hc0: { meaning: "standard errors, HC0" },
    se_hc1: { meaning: "HC1" },
    se_hc2: { meaning: "HC2" },
    se_hc3: { meaning: "HC3" },
    ci95_low_hc3: { meaning: "lower ends of the intervals" },
    ci95_high_hc3: { meaning: "upper ends" },
    p_hc3: { meaning: "two-sided p" },
  },
  source: sources.mackinnonWhite,
  run: (inputs) => {
    const level = levelFrom(inputs);
    if (!level.ok) return level;
    const data = explainedBy(inputs, [], 2);
    if (!data.ok) return data;
    const made = fitOf(data.value, level.value);
    if (!made.ok) return made;
    const fit = made.value;
    if (fit.residualSumOfSquares <= 1e-20 * sumOfSquares(data.value.y)) return declined("perfect-fit", { column: "y" });
    const se = robustErrors(fit, "hc3");
    const multiple = tQuantile((1 + level.value) / 2, fit.degreesOfFreedom);
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
