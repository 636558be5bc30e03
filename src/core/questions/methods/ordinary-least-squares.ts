import type { Method } from "../../base/index.ts";
import { succeeded } from "../../base/index.ts";
import { leastSquaresFields, leastSquaresSpecs } from "../fits/least-squares-fields.ts";
import { linearFit, ones } from "../fits/linear-fit.ts";
import { completeInputs } from "../inputs/complete-inputs.ts";
import { levelFrom, levelInput } from "../inputs/level-input.ts";
import { sources } from "./sources.ts";

const needs = { rows: 3, distinct: { x: 2 } };
const numbers = (value: unknown): readonly number[] => (Array.isArray(value) ? value.map(Number) : []);

/** Least squares of y on x with a constant: slope, constant and t intervals. */
export const ordinaryLeastSquares: Method = {
  id: "ols",
  name: "Least squares",
  answers: "relation",
  needs,
  inputs: {
    x: { kind: "quantities", meaning: "explaining quantity" },
    y: { kind: "quantities", meaning: "explained quantity" },
    level: levelInput,
    predict_at: { kind: "quantities", optional: true, meaning: "values of x to predict at" },
  },
  fields: leastSquaresSpecs,
  source: sources.draperSmith,
  run: (inputs) => {
    const level = levelFrom(inputs);
    if (!level.ok) return level;
    const complete = completeInputs(inputs, ["x", "y"], [], needs);
    if (!complete.ok) return complete;
    const { x, y } = complete.value.arrays as { x: Float64Array; y: Float64Array };
    return succeeded(
      leastSquaresFields(
        linearFit([ones(y.length), x], y, undefined, level.value),
        y,
        true,
        complete.value.setAside,
        numbers(inputs.predict_at).map((at) => [1, at]),
      ),
    );
  },
};
