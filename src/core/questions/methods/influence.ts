import type { InputSpec, Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { sumOfSquares } from "../../numerics/index.ts";
import { influenceMeasures } from "../fits/influence-measures.ts";
import { linearFit, ones } from "../fits/linear-fit.ts";
import { completeInputs, plain } from "../inputs/complete-inputs.ts";
import { ORDINALS } from "../inputs/explained-by.ts";
import { sources } from "./sources.ts";

const needs = { rows: 4, distinct: { x: 2 } };
/** A share of the scatter of y that is no more than rounding. */
const ROUNDING = 1e-24;
/** Explaining quantities beside x. */
const further = ORDINALS.slice(1).map((_, at) => `x${at + 2}`);

/** What each record does to a straight line: leverage, residuals, Cook's distance and the change of each coefficient without it. */
export const influence: Method = {
  id: "influence",
  name: "Influence of single records",
  answers: "relation",
  needs,
  inputs: {
    x: { kind: "quantities", meaning: "explaining quantity" },
    ...Object.fromEntries(
      further.map((name, at): [string, InputSpec] => [
        name,
        { kind: "quantities", optional: true, meaning: `${ORDINALS[at + 1]} explaining quantity` },
      ]),
    ),
    y: { kind: "quantities", meaning: "explained quantity" },
  },
  fields: {
    leverage: { meaning: "diagonal of the hat matrix" },
    standardized: { meaning: "residual over its standard deviation" },
    studentized: { meaning: "deleted residual" },
    cooks: { meaning: "Cook's distance" },
    dffits: { meaning: "change of the fit" },
    covratio: { meaning: "covariance ratio" },
    dfbetas_intercept: { meaning: "change of the constant in standard errors" },
    dfbetas_x: { meaning: "change of the slope in standard errors" },
    ...Object.fromEntries(
      further.map((name, at) => [`dfbetas_${name}`, { meaning: `of the ${ORDINALS[at + 1]} slope` }]),
    ),
    outlier_bonferroni_p: { meaning: "p of the largest deleted residual, times n" },
  },
  source: sources.belsley,
  run: (inputs) => {
    const names = ["x", ...further].filter((name) => inputs[name] !== undefined);
    const complete = completeInputs(inputs, ["y", ...names], [], { ...needs, rows: names.length + 3 });
    if (!complete.ok) return complete;
    const y = complete.value.arrays.y as Float64Array;
    const fit = linearFit([ones(y.length), ...names.map((name) => complete.value.arrays[name] as Float64Array)], y);
    if (fit.rank <= names.length)
      return declined("collinear", {
        column: fit.dependent.map((at) => names[at - 1] ?? "the constant").join(" and "),
      });
    if (fit.residualSumOfSquares <= ROUNDING * sumOfSquares(y)) return declined("perfect-fit", { column: "y" });
    const measures = influenceMeasures(fit);
    return succeeded({
      leverage: plain(fit.leverage),
      standardized: plain(measures.standardized),
      studentized: plain(measures.studentized),
      cooks: plain(measures.cooks),
      dffits: plain(measures.dffits),
      covratio: plain(measures.covarianceRatio),
      dfbetas_intercept: plain(measures.dfbetas[0] ?? []),
      ...Object.fromEntries(names.map((name, at) => [`dfbetas_${name}`, plain(measures.dfbetas[at + 1] ?? [])])),
      outlier_bonferroni_p: measures.outlierP,
    });
  },
};
