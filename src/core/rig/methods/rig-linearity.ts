// Linearity: whether the bias is the same across the range.
import type { Method } from "../../base/index.ts";
import { declined, succeeded } from "../../base/index.ts";
import { compensatedSum, fUpperTail, leastSquares, mean, tQuantile, tTwoSided } from "../../numerics/index.ts";
import { inputNumbers } from "./input-numbers.ts";

type Level = { readonly reference: number; readonly errors: readonly number[] };

function levelsOf(reference: readonly number[], error: readonly number[]): readonly Level[] {
  const byReference = new Map<number, number[]>();
  for (const [i, value] of reference.entries()) {
    const errors = byReference.get(value) ?? [];
    errors.push(error[i] as number);
    byReference.set(value, errors);
  }
  return [...byReference]
    .map(([value, errors]) => ({ reference: value, errors }))
    .sort((a, b) => a.reference - b.reference);
}

/** F of the levels' means about the line, against the scatter within levels; null where nothing was read twice or there are two levels. */
function lackOfFit(
  levels: readonly Level[],
  residualSumOfSquares: number,
  n: number,
): { readonly f: number; readonly p: number } | null {
  const pure = compensatedSum(levels.flatMap(({ errors }) => errors.map((error) => (error - mean(errors)) ** 2)));
  const [df1, df2] = [levels.length - 2, n - levels.length];
  if (df1 < 1 || df2 < 1 || !(pure > 0)) return null;
  const f = Math.max(0, residualSumOfSquares - pure) / df1 / (pure / df2);
  return { f, p: fUpperTail(f, df1, df2) };
}

/**
 * Straight line of reading − reference on reference, error = intercept + slope · reference, with the interval of the bias at each reference.
 * reading, reference: at least three pairs and two different references. Lack of fit is withheld where it cannot be told.
 * Source: Draper and Smith (1998), sections 1.4 and 2.1; the fields are those of ordinary least squares on the errors.
 */
export const rigLinearity: Method = {
  id: "rig-linearity",
  name: "Bias across the range",
  answers: "rig",
  needs: { rows: 3, distinct: { reference: 2 } },
  inputs: {
    reading: { kind: "quantities", meaning: "what the rig read" },
    reference: { kind: "quantities", like: "reading", meaning: "the true value of each reading" },
    level: { kind: "number", optional: true, above: 0, below: 1, meaning: "level of the intervals, 0.95" },
  },
  fields: {
    mean_bias: { meaning: "mean error at each reference, in rising order" },
    intercept: { meaning: "bias where the reference would be zero" },
    slope: { meaning: "change of the bias per unit of reference" },
    se_intercept: { meaning: "standard error of the intercept" },
    se_slope: { meaning: "standard error of the slope" },
    t_intercept: { meaning: "intercept over its standard error" },
    t_slope: { meaning: "slope over its standard error" },
    p_slope: { meaning: "two-sided tail probability of the slope's t" },
    r2: { meaning: "share of the errors' variance that the line explains" },
    sigma: { meaning: "residual standard deviation" },
    bias_low: { meaning: "lower end of the interval of the bias at each reference" },
    bias_high: { meaning: "upper end of the interval of the bias at each reference" },
    average_bias: { meaning: "mean of all errors" },
    lack_of_fit_F: { meaning: "variance of the levels about the line over the variance within levels" },
    lack_of_fit_p: { meaning: "upper tail probability of that F" },
  },
  source: {
    citation: "Draper and Smith, Applied Regression Analysis, 3rd ed. (1998), sections 1.4 and 2.1",
    basis: "memory",
  },
  run: (inputs) => {
    const [readings, references] = [inputNumbers(inputs.reading), inputNumbers(inputs.reference)];
    const kept = readings.flatMap((value, i) => (Number.isFinite(value) && Number.isFinite(references[i]) ? [i] : []));
    const reference = kept.map((i) => references[i] as number);
    const error = kept.map((i, at) => (readings[i] as number) - (reference[at] as number));
    const n = kept.length;
    if (n < 3) return declined("too-few-records", { have: n, need: 3 });
    const levels = levelsOf(reference, error);
    if (levels.length < 2) return declined("no-spread", { column: "reference" });
    const fit = leastSquares([new Float64Array(n).fill(1), Float64Array.from(reference)], Float64Array.from(error));
    const df = n - 2;
    const average = mean(error);
    const total = compensatedSum(error.map((value) => (value - average) ** 2));
    const variance = fit.residualSumOfSquares / df;
    if (fit.rank < 2 || !(variance > 0)) return declined("perfect-fit", { column: "reading" });
    const [intercept, slope] = [fit.coefficients[0] as number, fit.coefficients[1] as number];
    const [se0, se1] = [0, 1].map((j) => Math.sqrt(variance * (fit.inverse[j]?.[j] as number))) as [number, number];
    const multiple = tQuantile((1 + (typeof inputs.level === "number" ? inputs.level : 0.95)) / 2, df);
    const middle = mean(reference);
    const spread = compensatedSum(reference.map((value) => (value - middle) ** 2));
    const half = levels.map(
      (level) => multiple * Math.sqrt(variance * (1 / n + (level.reference - middle) ** 2 / spread)),
    );
    const at = levels.map((level) => average + slope * (level.reference - middle));
    const lack = lackOfFit(levels, fit.residualSumOfSquares, n);
    return succeeded({
      mean_bias: levels.map((level) => mean(level.errors)),
      intercept,
      slope,
      se_intercept: se0,
      se_slope: se1,
      t_intercept: intercept / se0,
      t_slope: slope / se1,
      p_slope: tTwoSided(slope / se1, df),
      r2: total > 0 ? 1 - fit.residualSumOfSquares / total : null,
      sigma: Math.sqrt(variance),
      bias_low: at.map((value, i) => value - (half[i] as number)),
      bias_high: at.map((value, i) => value + (half[i] as number)),
      average_bias: average,
      lack_of_fit_F: lack?.f ?? null,
      lack_of_fit_p: lack?.p ?? null,
    });
  },
};
