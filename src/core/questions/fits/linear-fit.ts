import { fUpperTail, sumOfSquares, tQuantile, tTwoSided } from "../../numerics/index.ts";
import { type CentredLeastSquares, centredLeastSquares } from "./centred-least-squares.ts";

/** A least-squares fit with what follows from it. Arrays: one entry a coefficient. NaN where there are no degrees of freedom. */
export type LinearFit = CentredLeastSquares & {
  readonly X: readonly Float64Array[];
  readonly standardErrors: Float64Array;
  readonly low: Float64Array;
  readonly high: Float64Array;
  readonly t: Float64Array;
  readonly p: Float64Array;
  /** Residual standard deviation, unit of y. */
  readonly sigma: number;
  /** Level of the intervals. */
  readonly level: number;
};

/** Least squares of y on the columns X with t intervals at `level`. Source: Draper and Smith (1998), chapter 4. */
export function linearFit(
  X: readonly Float64Array[],
  y: Float64Array,
  weights?: Float64Array,
  level = 0.95,
): LinearFit {
  const fit = centredLeastSquares(X, y, weights);
  const df = fit.degreesOfFreedom;
  const variance = df > 0 ? fit.residualSumOfSquares / df : Number.NaN;
  const standardErrors = Float64Array.from(fit.inverse, (row, j) => Math.sqrt((row[j] as number) * variance));
  const multiple = df > 0 ? tQuantile((1 + level) / 2, df) : Number.NaN;
  const coefficients = fit.coefficients;
  const t = coefficients.map((b, j) =>
    Number.isFinite(standardErrors[j]) ? b / (standardErrors[j] as number) : Number.NaN,
  );
  return {
    ...fit,
    X,
    standardErrors,
    low: coefficients.map((b, j) => b - multiple * (standardErrors[j] as number)),
    high: coefficients.map((b, j) => b + multiple * (standardErrors[j] as number)),
    t,
    p: t.map((value) => (df > 0 && Number.isFinite(value) ? tTwoSided(value, df) : Number.NaN)),
    sigma: Math.sqrt(variance),
    level,
  };
}

/** Share of the scatter explained and its F test; about the mean with a constant, about zero without; weighted where weights are given. */
export function explainedShare(
  fit: LinearFit,
  y: Float64Array,
  constant: boolean,
  weights?: Float64Array,
): { r2: number; adjusted: number; F: number; df1: number; p: number } {
  const total = weights
    ? weightedSquares(y, weights, constant)
    : constant
      ? sumOfSquares(y)
      : y.reduce((sum, value) => sum + value * value, 0);
  const df1 = fit.rank - (constant ? 1 : 0);
  const df2 = fit.degreesOfFreedom;
  const r2 = total > 0 ? 1 - fit.residualSumOfSquares / total : Number.NaN;
  const F = (total - fit.residualSumOfSquares) / df1 / (fit.residualSumOfSquares / df2);
  const adjusted = 1 - ((1 - r2) * (df2 + df1)) / df2;
  return { r2, adjusted, F, df1, p: df2 > 0 && F >= 0 && Number.isFinite(F) ? fUpperTail(F, df1, df2) : Number.NaN };
}

function weightedSquares(y: Float64Array, weights: Float64Array, constant: boolean): number {
  let sum = 0;
  let total = 0;
  for (let i = 0; i < y.length; i++) {
    sum += (weights[i] as number) * (y[i] as number);
    total += weights[i] as number;
  }
  const centre = constant ? sum / total : 0;
  return y.reduce((squares, value, i) => squares + (weights[i] as number) * (value - centre) ** 2, 0);
}

/** Fit, interval of the mean and interval of a next record, at the level of the fit, at one place x (one value a coefficient). Source: Draper and Smith, eq. 3.1.2. */
export function fitAt(
  fit: LinearFit,
  x: readonly number[],
): { fit: number; meanLow: number; meanHigh: number; nextLow: number; nextHigh: number } {
  const { coefficients, inverse } = fit.inner;
  const off = x.map((value, j) => value - (fit.centres[j] as number));
  let value = 0;
  let leverage = 0;
  for (const [a, first] of off.entries()) {
    value += first * (coefficients[a] as number);
    for (const [b, second] of off.entries()) leverage += first * second * ((inverse[a] as Float64Array)[b] as number);
  }
  const multiple =
    fit.degreesOfFreedom > 0 ? tQuantile((1 + fit.level) / 2, fit.degreesOfFreedom) * fit.sigma : Number.NaN;
  const mean = multiple * Math.sqrt(Math.max(0, leverage));
  const next = multiple * Math.sqrt(1 + Math.max(0, leverage));
  return { fit: value, meanLow: value - mean, meanHigh: value + mean, nextLow: value - next, nextHigh: value + next };
}

/** A column of ones. */
export const ones = (n: number): Float64Array => new Float64Array(n).fill(1);
