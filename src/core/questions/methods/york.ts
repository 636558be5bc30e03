import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { chiSquareUpperTail } from "../../numerics/index.ts";
import { linearFit, ones } from "../fits/linear-fit.ts";
import { completeInputs } from "../inputs/complete-inputs.ts";
import { sources } from "./sources.ts";

const needs = { rows: 3, distinct: { x: 2 }, positive: ["wx", "wy"] };
const STEPS = 500;

export type YorkLine = {
  readonly slope: number;
  readonly intercept: number;
  readonly slopeError: number;
  readonly interceptError: number;
  readonly chiSquare: number;
  readonly converged: boolean;
};

/**
 * Line through points with an uncertainty in each coordinate. wx, wy: one over the variance of each coordinate; r: correlation of the two errors of each
 * point, inside (-1, 1). Iterates until the slope changes by less than 1e-15 relative; `converged` is false where it still moves by more than 1e-10 after 500
 * steps. Source: York et al. (2004), eqs. 13a to 13d.
 */
export function yorkLine(
  x: Float64Array,
  y: Float64Array,
  wx: Float64Array,
  wy: Float64Array,
  r: Float64Array,
): YorkLine {
  let slope = linearFit([ones(x.length), x], y).coefficients[1] as number;
  const w = new Float64Array(x.length);
  const beta = new Float64Array(x.length);
  let [mx, my, total] = [0, 0, 0];
  const weigh = () => {
    [mx, my, total] = [0, 0, 0];
    for (let i = 0; i < x.length; i++) {
      const [atX, atY] = [wx[i] as number, wy[i] as number];
      w[i] = (atX * atY) / (atX + slope * slope * atY - 2 * slope * (r[i] as number) * Math.sqrt(atX * atY));
      total += w[i] as number;
      mx += (w[i] as number) * (x[i] as number);
      my += (w[i] as number) * (y[i] as number);
    }
    mx /= total;
    my /= total;
    for (let i = 0; i < x.length; i++) {
      const [u, v, atX, atY] = [(x[i] as number) - mx, (y[i] as number) - my, wx[i] as number, wy[i] as number];
      const tied = ((slope * u + v) * (r[i] as number)) / Math.sqrt(atX * atY);
      beta[i] = (w[i] as number) * (u / atY + (slope * v) / atX - tied);
    }
  };
  // A slope of nothing is told by the slope at which both errors count the same.
  const usual = 1e-6 * Math.sqrt((wx[0] as number) / (wy[0] as number));
  let moved = Number.POSITIVE_INFINITY;
  for (let step = 0; step < STEPS && moved > 1e-15; step++) {
    weigh();
    let [above, below] = [0, 0];
    for (let i = 0; i < x.length; i++) {
      above += (w[i] as number) * (beta[i] as number) * ((y[i] as number) - my);
      below += (w[i] as number) * (beta[i] as number) * ((x[i] as number) - mx);
    }
    const next = above / below;
    moved = Math.abs(next - slope) / Math.max(Math.abs(next), usual);
    slope = next;
  }
  weigh();
  const intercept = my - slope * mx;
  const adjusted = beta.reduce((sum, b, i) => sum + (w[i] as number) * (mx + b), 0) / total;
  const spread = beta.reduce((sum, b, i) => sum + (w[i] as number) * (mx + b - adjusted) ** 2, 0);
  const slopeError = Math.sqrt(1 / spread);
  return {
    slope,
    intercept,
    slopeError,
    interceptError: Math.sqrt(1 / total + adjusted * adjusted * slopeError * slopeError),
    converged: moved <= 1e-10,
    chiSquare: w.reduce(
      (sum, weight, i) => sum + weight * ((y[i] as number) - slope * (x[i] as number) - intercept) ** 2,
      0,
    ),
  };
}

/** An uncertainty for each coordinate of each point. The standard errors are those of the stated uncertainties, not scaled by the scatter. */
export const york: Method = {
  id: "york",
  name: "York's line (an uncertainty for each reading)",
  answers: "relation",
  needs,
  inputs: {
    x: { kind: "quantities", meaning: "explaining quantity" },
    y: { kind: "quantities", meaning: "explained quantity" },
    wx: { kind: "quantities", meaning: "one over the variance of each x" },
    wy: { kind: "quantities", meaning: "one over the variance of each y" },
    r: {
      kind: "quantities",
      optional: true,
      meaning: "correlation of the errors of x and y of each point, above -1 and below 1; none unless given",
    },
  },
  fields: {
    slope: { meaning: "slope" },
    intercept: { meaning: "constant" },
    se_slope: { meaning: "standard error of the slope" },
    se_intercept: { meaning: "of the constant" },
    chi2: { meaning: "weighted squares left" },
    reduced_chi2: { meaning: "the same over n - 2" },
    p_fit: { meaning: "p that the uncertainties explain the scatter" },
  },
  source: sources.york,
  run: (inputs) => {
    const isTied = inputs.r !== undefined;
    const complete = completeInputs(inputs, ["x", "y", "wx", "wy", ...(isTied ? ["r"] : [])], [], needs);
    if (!complete.ok) return complete;
    const { x, y, wx, wy } = complete.value.arrays as Record<"x" | "y" | "wx" | "wy", Float64Array>;
    const r = complete.value.arrays.r ?? new Float64Array(x.length);
    if (!r.every((each) => Math.abs(each) < 1))
      return declined("out-of-domain", { name: "r", needed: "correlations above -1 and below 1" });
    const line = yorkLine(x, y, wx, wy, r);
    if (!Number.isFinite(line.slope) || !Number.isFinite(line.slopeError))
      return declined("not-finite", { name: "the slope" });
    if (!line.converged) return declined("not-converged", { name: "the slope" });
    const df = x.length - 2;
    return succeeded({
      slope: line.slope,
      intercept: line.intercept,
      se_slope: line.slopeError,
      se_intercept: line.interceptError,
      chi2: line.chiSquare,
      reduced_chi2: line.chiSquare / df,
      p_fit: chiSquareUpperTail(line.chiSquare, df),
    });
  },
  cautions: (_, { p_fit, reduced_chi2 }) =>
    Number(p_fit) < 0.01
      ? [{ code: "scatter-beyond-uncertainty", facts: { times: Math.sqrt(Number(reduced_chi2)).toPrecision(2) } }]
      : [],
};
