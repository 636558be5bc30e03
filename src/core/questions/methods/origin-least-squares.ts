import type { Method } from "../../base/index.ts";
import { succeeded } from "../../base/index.ts";
import { leastSquaresFields, leastSquaresSpecs } from "../fits/least-squares-fields.ts";
import { linearFit } from "../fits/linear-fit.ts";
import { levelInput } from "../inputs/level-input.ts";
import { pairedRecords } from "../inputs/paired-records.ts";
import { sources } from "./sources.ts";

const needs = { rows: 2 };

/** Least squares through the origin: y = b x. The explained share is about zero, not about the mean. */
export const originLeastSquares: Method = {
  id: "ols-origin",
  name: "Least squares through the origin",
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
    if (x.every((value) => value === 0)) return { ok: false, refusal: { code: "no-spread", facts: { column: "x" } } };
    const places = Array.isArray(inputs.predict_at) ? inputs.predict_at.map((at) => [Number(at)]) : [];
    return succeeded(leastSquaresFields(linearFit([x], y, undefined, level), y, false, pair.value.setAside, places));
  },
};
