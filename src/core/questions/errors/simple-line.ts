import { declined, type Method, succeeded } from "../../base/index.ts";
import { correlation } from "../fits/correlation.ts";
import { linearFit, ones } from "../fits/linear-fit.ts";
import { completeInputs } from "../inputs/complete-inputs.ts";

const needs = { rows: 3, distinct: { x: 2 } };

/** One line through records, each of its numbers under a name of its own: what `ols` gives as lists. */
export const simpleLine: Method = {
  id: "simple-line",
  name: "A straight line through records",
  answers: "relation",
  needs,
  inputs: {
    x: { kind: "quantities", meaning: "explaining quantity" },
    y: { kind: "quantities", meaning: "explained quantity" },
  },
  fields: {
    n: { meaning: "records used" },
    set_aside: { meaning: "records with a missing value" },
    intercept: { meaning: "value of the line where x is zero" },
    intercept_se: { meaning: "its standard error" },
    slope: { meaning: "change of y for one unit of x" },
    slope_se: { meaning: "its standard error" },
    r: { meaning: "correlation; withheld where y does not vary" },
  },
  source: { citation: "Draper and Smith (1998), Applied Regression Analysis, chapter 1", basis: "published" },
  run: (inputs) => {
    const complete = completeInputs(inputs, ["x", "y"], [], needs);
    if (!complete.ok) return complete;
    const { x, y } = complete.value.arrays as { x: Float64Array; y: Float64Array };
    const fit = linearFit([ones(x.length), x], y);
    const [intercept, slope] = fit.coefficients;
    if (!Number.isFinite(intercept) || !Number.isFinite(slope)) return declined("not-finite", { name: "the line" });
    const r = correlation(x, y);
    return succeeded({
      n: x.length,
      set_aside: complete.value.setAside,
      intercept,
      intercept_se: fit.standardErrors[0],
      slope,
      slope_se: fit.standardErrors[1],
      r: Number.isFinite(r) ? r : null,
    });
  },
};
