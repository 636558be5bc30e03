import { mean, normalQuantile, standardDeviation, tQuantile } from "../../numerics/index.ts";
import { linearFit, ones } from "../fits/linear-fit.ts";

/** Bland and Altman's limits of agreement of the differences a - b. At least three pairs. Source: Bland and Altman (1999), section 2. */
export function agreementLimits(
  a: Float64Array,
  b: Float64Array,
  { level = 0.95, multiplier = normalQuantile(0.975) }: { readonly level?: number; readonly multiplier?: number } = {},
) {
  const n = a.length;
  const differences = a.map((value, i) => value - (b[i] as number));
  const [bias, sd, z] = [mean(differences), standardDeviation(differences), multiplier];
  const t = tQuantile((1 + level) / 2, n - 1);
  const biasError = sd / Math.sqrt(n);
  const limitError = sd * Math.sqrt(1 / n + (z * z) / (2 * (n - 1)));
  const middle = a.map((value, i) => (value + (b[i] as number)) / 2);
  const trend = linearFit([ones(n), middle], differences);
  return {
    n,
    differences,
    middle,
    bias,
    sd,
    biasError,
    biasHalf: t * biasError,
    low: bias - z * sd,
    high: bias + z * sd,
    limitError,
    limitHalf: t * limitError,
    trend: trend.rank === 2 ? trend : null,
  };
}
