import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { chiSquareUpperTail } from "../../numerics/index.ts";
import { completeInputs } from "./complete-inputs.ts";
import { linearFit, ones } from "./linear-fit.ts";
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
 * Line through points with an uncertainty in each coordinate, errors uncorrelated. wx, wy: one over the variance of each coordinate. Iterates
 * until the slope changes by less than 1e-15 relative; `converged` is false after 500 steps. Source: York et al. (2004), eqs. 13a to 13d.
 */
export function yorkLine(x: Float64Array, y: Float64Array, wx: Float64Array, wy: Float64Array): YorkLine {
  let slope = linearFit([ones(x.length), x], y).coefficients[1] as number;
  let converged = false;
  const w = new Float64Array(x.length);
  const beta = new Float64Array(x.length);
  let [mx, my, total] = [0, 0, 0];
  const weigh = () => {
    [mx, my, total] = [0, 0, 0];
    for (let i = 0; i < x.length; i++) {
      w[i] = ((wx[i] as number) * (wy[i] as number)) / ((wx[i] as number) + slope * slope * (wy[i] as number));
      total += w[i] as number;
      mx += (w[i] as number) * (x[i] as number);
      my += (w[i] as number) * (y[i] as number);
    }
    mx /= total;
    my /= total;
    for (let i = 0; i < x.length; i++)
      beta[i] =
        (w[i] as number) *
        (((x[i] as number) - mx) / (wy[i] as number) + (slope * ((y[i] as number) - my)) / (wx[i] as number));
  };
  for (let step = 0; step < STEPS && !converged; step++) {
    weigh();
    let [above, below] = [0, 0];
    for (let i = 0; i < x.length; i++) {
      above += (w[i] as number) * (beta[i] as number) * ((y[i] as number) - my);
      below += (w[i] as number) * (beta[i] as number) * ((x[i] as number) - mx);
    }
    const next = above / below;
    converged = Math.abs(next - slope) <= 1e-15 * Math.abs(next);
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
    converged,
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
    const complete = completeInputs(inputs, ["x", "y", "wx", "wy"], [], needs);
    if (!complete.ok) return complete;
    const { x, y, wx, wy } = complete.value.arrays as {
      x: Float64Array;
      y: Float64Array;
      wx: Float64Array;
      wy: Float64Array;
    };
    const line = yorkLine(x, y, wx, wy);
    if (!Number.isFinite(line.slope) || !Number.isFinite(line.slopeError))
      return declined("not-finite", { name: "the slope" });
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
