import { declined, type Method } from "../../base/index.ts";
import type { Coverage } from "./coverage-fields.ts";
import { gumBudget } from "./gum-budget.ts";
import { gumLine } from "./gum-line.ts";
import { gumModel } from "./gum-model.ts";

const CURVED_FROM = 0.05;

/** Standard uncertainty of a result by first-order propagation: of a model, of a budget of components, of a calibration line. */
export const gum: Method = {
  id: "gum",
  name: "Uncertainty of a result, first order",
  answers: "uncertainty",
  needs: {},
  inputs: {
    model: {
      kind: "text",
      optional: true,
      meaning: "formula, as in density = mass / (length * width * thickness); several results set apart by commas",
    },
    inputs: {
      kind: "table",
      optional: true,
      meaning:
        "the model's inputs, each {name, value, u} with u_relative, half_width and law, df, unit, or readings instead",
    },
    correlations: {
      kind: "table",
      optional: true,
      meaning: "pairs that are not independent: {between: [name, name], coefficient}",
    },
    simultaneous: {
      kind: "yes-no",
      optional: true,
      meaning:
        "whether readings were taken together, so that their covariance counts; yes where all have as many readings",
    },
    component_u: { kind: "quantities", optional: true, meaning: "a budget instead of a model: standard uncertainties" },
    component_df: { kind: "quantities", optional: true, meaning: "their degrees of freedom, missing for infinite" },
    component_sensitivity: { kind: "quantities", optional: true, meaning: "their sensitivities, 1 if not given" },
    estimate: { kind: "number", optional: true, meaning: "the result of the budget" },
    x: { kind: "quantities", optional: true, meaning: "a calibration line instead of a model: places" },
    y: { kind: "quantities", optional: true, meaning: "readings at them" },
    x0: { kind: "number", optional: true, meaning: "place at which the line's constant is read, 0 if not given" },
    predict_at: { kind: "quantities", optional: true, meaning: "places at which the line is read" },
    level: { kind: "number", optional: true, meaning: "level of k and U, 0.95" },
    truncate: {
      kind: "yes-no",
      optional: true,
      meaning:
        "whether effective degrees of freedom are cut to the whole number below before k is taken; yes if not given",
    },
  },
  fields: {
    value: { meaning: "result; of a line at predict_at" },
    u: { meaning: "its standard uncertainty" },
    u_c: { meaning: "the same, of a budget" },
    relative_u: { meaning: "standard uncertainty over the size of the result" },
    share: { meaning: "share of the variance by input, in the order of inputs" },
    correlation_share: { meaning: "what correlations add to the variance, as a share of it" },
    sensitivity: { meaning: "derivative of the result by each input" },
    u_ignoring_correlation: { meaning: "standard uncertainty if all inputs were independent" },
    second_order_shift: { meaning: "what the curvature adds to the mean" },
    second_order_u: { meaning: "standard uncertainty with the curvature's part of the variance" },
    curvature: { meaning: "second-order variance over first-order variance" },
    df_eff: { meaning: "effective degrees of freedom; withheld where infinite" },
    df_used: { meaning: "degrees of freedom of k" },
    k95: { meaning: "factor of the 95 % interval" },
    k99: { meaning: "factor of the 99 % interval" },
    k: { meaning: "factor at the level asked for" },
    U95: { meaning: "expanded uncertainty at 95 %" },
    U99: { meaning: "expanded uncertainty at 99 %" },
    U: { meaning: "expanded uncertainty at the level asked for" },
    name: { meaning: "name of the result" },
    inputs: { meaning: "names of the inputs, in order" },
    input_values: { meaning: "estimates of the inputs" },
    input_u: { meaning: "their standard uncertainties" },
    input_correlations: { meaning: "correlation of each pair of inputs" },
    results: { meaning: "each result by name, where the model has several" },
    correlations: { meaning: "correlation of each pair of results" },
    a: { meaning: "line: value at x0" },
    u_a: { meaning: "its standard uncertainty" },
    b: { meaning: "line: slope" },
    u_b: { meaning: "its standard uncertainty" },
    r_ab: { meaning: "correlation of a and b" },
    s: { meaning: "residual standard deviation of the line" },
    df: { meaning: "degrees of freedom of the line" },
    u_value: { meaning: "standard uncertainty of the line at predict_at" },
    set_aside: { meaning: "records with a missing value" },
    chosen: { meaning: "which way was taken and why" },
  },
  source: { citation: "JCGM 100:2008, clauses 5 and 6, annexes G and H", basis: "published" },
  run: (inputs) => {
    const level = inputs.level ?? 0.95;
    if (typeof level !== "number" || !(level > 0 && level < 1))
      return declined("out-of-domain", { name: "level", needed: "a number above 0 and below 1" });
    const coverage: Coverage = { level, isTruncated: inputs.truncate !== false };
    if (inputs.model !== undefined)
      return typeof inputs.model === "string"
        ? gumModel(inputs.model, inputs, coverage)
        : declined("out-of-domain", { name: "model", needed: "a formula as text" });
    if (inputs.component_u !== undefined) return gumBudget(inputs, coverage);
    if (inputs.x !== undefined || inputs.y !== undefined) return gumLine(inputs, coverage);
    return declined("out-of-domain", { name: "model", needed: "a formula, or component_u, or x and y" });
  },
  cautions: (_, fields) => {
    const curvature = fields.curvature;
    return typeof curvature === "number" && curvature > CURVED_FROM
      ? [{ code: "curved-model", facts: { share: `${Math.round(100 * curvature)} %` } }]
      : [];
  },
};
