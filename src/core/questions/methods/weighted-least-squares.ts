import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { leastSquaresFields, leastSquaresSpecs } from "../fits/least-squares-fields.ts";
import { linearFit, ones } from "../fits/linear-fit.ts";
import { completeInputs } from "../inputs/complete-inputs.ts";
import { levelFrom, levelInput } from "../inputs/level-input.ts";
import { sources } from "./sources.ts";

const needs = { rows: 3, distinct: { x: 2 } };

/** Least squares with relative weights w, proportional to one over the variance; the scale is estimated from the residuals. A weight of 0 counts nothing. */
export const weightedLeastSquares: Method = {
  id: "ols-weighted",
  name: "Weighted least squares",
  answers: "relation",
  needs,
  inputs: {
    x: { kind: "quantities", meaning: "explaining quantity" },
    y: { kind: "quantities", meaning: "explained quantity" },
    w: { kind: "quantities", meaning: "relative weights, 0 or above" },
    level: levelInput,
    predict_at: { kind: "quantities", optional: true, meaning: "values of x to predict at" },
  },
  fields: leastSquaresSpecs,
  source: sources.draperSmith,
  run: (inputs) => {
    const level = levelFrom(inputs);
    if (!level.ok) return level;
    const complete = completeInputs(inputs, ["x", "y", "w"], [], needs);
    if (!complete.ok) return complete;
    const { x, y, w } = complete.value.arrays as { x: Float64Array; y: Float64Array; w: Float64Array };
    if (w.some((weight) => weight < 0))
      return declined("out-of-domain", { name: "w", needed: "weights of zero or above" });
    const fit = linearFit([ones(y.length), x], y, w, level.value);
    if (fit.rank < 2) return declined("no-spread", { column: "x" });
    const places = Array.isArray(inputs.predict_at) ? inputs.predict_at.map((at) => [1, Number(at)]) : [];
    return succeeded(leastSquaresFields(fit, y, true, complete.value.setAside, places, w));
  },
};
