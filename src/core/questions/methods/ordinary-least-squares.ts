import type { Method } from "../../base/index.ts";
import { succeeded } from "../../base/index.ts";
import { leastSquaresFields, leastSquaresSpecs } from "../fits/least-squares-fields.ts";
import { linearFit, ones } from "../fits/linear-fit.ts";
import { levelInput } from "../inputs/level-input.ts";
import { pairedRecords } from "../inputs/paired-records.ts";
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
    const pair = pairedRecords(inputs, needs);
    if (!pair.ok) return pair;
    const { x, y, level } = pair.value;
    return succeeded(
      leastSquaresFields(
        linearFit([ones(y.length), x], y, undefined, level),
        y,
        true,
        pair.value.setAside,
        numbers(inputs.predict_at).map((at) => [1, at]),
      ),
    );
  },
};
