import { declined, type Method, type MethodFields, succeeded } from "../../base/index.ts";
import {
  binomialLowerTail,
  binomialQuantile,
  centralMoments,
  compensatedSum,
  mean,
  median,
  quantileOfType,
  tQuantile,
} from "../../numerics/index.ts";
import { knownNumber as known } from "../inputs/known-number.ts";
import { levelFrom, levelInput } from "../inputs/level-input.ts";
import { oneColumn } from "../inputs/one-column.ts";

const QUANTILES = [0.05, 0.1, 0.25, 0.5, 0.75, 0.9, 0.95];
const TRIM = 0.1;

/** Centre, spread and shape. Withheld where n or the spread does not allow them. */
function momentFields(x: Float64Array, level: number): MethodFields {
  const n = x.length;
  const { mean: middle, m2, m3, m4 } = centralMoments(x);
  const variance = n > 1 ? (m2 * n) / (n - 1) : Number.NaN;
  const sem = Math.sqrt(variance / n);
  const half = n > 1 ? sem * tQuantile((1 + level) / 2, n - 1) : Number.NaN;
  const skewness = m3 / m2 ** 1.5;
  const kurtosis = m4 / m2 ** 2 - 3;
  return {
    mean: middle,
    sd: known(Math.sqrt(variance)),
    sd_population: Math.sqrt(m2),
    variance: known(variance),
    sem: known(sem),
    cv: middle === 0 ? null : known(Math.sqrt(variance) / middle),
    mean_ci95_low: known(middle - half),
    mean_ci95_high: known(middle + half),
    skewness_g1: n > 1 ? known(skewness) : null,
    skewness_G1: n > 2 ? known((skewness * Math.sqrt(n * (n - 1))) / (n - 2)) : null,
    excess_kurtosis_g2: n > 1 ? known(kurtosis) : null,
    excess_kurtosis_G2: n > 3 ? known(((n - 1) / ((n - 2) * (n - 3))) * ((n + 1) * kurtosis + 6)) : null,
  };
}

/** Interval of the median by order statistics: the k-th and the (n + 1 - k)-th, k the binomial quantile; none where n is too small for the level. */
function medianInterval(sorted: Float64Array, level: number): MethodFields {
  const n = sorted.length;
  const k = binomialQuantile((1 - level) / 2, n, 0.5);
  return {
    median_ci95_low: k > 0 ? sorted[k - 1] : null,
    median_ci95_high: k > 0 ? sorted[n - k] : null,
    median_ci_level: k > 0 ? 1 - 2 * binomialLowerTail(k - 1, n, 0.5) : null,
  };
}

/** Fields of order: quantiles of three types, distances from the median, the trimmed mean. */
function orderFields(sorted: Float64Array, at: readonly number[], level: number): MethodFields {
  const n = sorted.length;
  const middle = median(sorted);
  const distance = median(sorted.map((value) => Math.abs(value - middle)));
  const cut = Math.floor(n * TRIM);
  return {
    median: middle,
    mad_raw: distance,
    mad: 1.4826 * distance,
    min: sorted[0],
    max: sorted[n - 1],
    range: (sorted[n - 1] ?? Number.NaN) - (sorted[0] ?? Number.NaN),
    q_type7: at.map((p) => quantileOfType(sorted, p, 7)),
    q_type6: at.map((p) => quantileOfType(sorted, p, 6)),
    q_type8: at.map((p) => quantileOfType(sorted, p, 8)),
    iqr: quantileOfType(sorted, 0.75, 7) - quantileOfType(sorted, 0.25, 7),
    trimmed_mean_10: mean(sorted.subarray(cut, n - cut)),
    ...medianInterval(sorted, level),
  };
}

const geometricMean = (x: Float64Array): number | null =>
  x.every((value) => value > 0) ? Math.exp(compensatedSum(x.map(Math.log)) / x.length) : null;

const isShare = (value: unknown): value is number => typeof value === "number" && value >= 0 && value <= 1;

/**
 * What one column says: centre, spread, shape, quantiles. A record is subtracted before anything is summed, so a large common offset costs no digits.
 * x: finite numbers, missing ones set aside; quantiles_at: shares in [0, 1]. One record gives mean and median, and no spread.
 * Source: Hyndman and Fan (1996), The American Statistician 50, 361-365; Joanes and Gill (1998), The Statistician 47, 183-189 (skewness).
 */
export const descriptive: Method = {
  id: "descriptive",
  name: "Description of one column",
  answers: "description",
  needs: { rows: 1 },
  inputs: {
    x: { kind: "quantities", meaning: "the column" },
    quantiles_at: { kind: "quantities", optional: true, meaning: "shares at which quantiles are given, 0 to 1" },
    level: levelInput,
  },
  fields: {
    n: { meaning: "records that count" },
    set_aside: { meaning: "records without a value" },
    mean: { meaning: "arithmetic mean" },
    sd: { meaning: "standard deviation, n - 1 below; withheld for one record" },
    sd_population: { meaning: "standard deviation, n below" },
    variance: { meaning: "square of sd" },
    sem: { meaning: "standard error of the mean" },
    cv: { meaning: "sd over mean, with the sign of the mean; withheld where the mean is zero" },
    mean_ci95_low: { meaning: "t interval of the mean at the level, lower end" },
    mean_ci95_high: { meaning: "upper end" },
    skewness_g1: { meaning: "third central moment over the second to 3/2" },
    skewness_G1: { meaning: "the same, corrected for n" },
    excess_kurtosis_g2: { meaning: "fourth central moment over the square of the second, less 3" },
    excess_kurtosis_G2: { meaning: "the same, corrected for n" },
    median: { meaning: "middle record, or the mean of the middle two" },
    mad_raw: { meaning: "median distance from the median" },
    mad: { meaning: "the same times 1.4826" },
    min: { meaning: "smallest record" },
    max: { meaning: "largest record" },
    range: { meaning: "largest less smallest" },
    quantiles_at: { meaning: "shares of the quantiles" },
    q_type7: { meaning: "quantiles of type 7 of Hyndman and Fan" },
    q_type6: { meaning: "quantiles of type 6" },
    q_type8: { meaning: "quantiles of type 8" },
    iqr: { meaning: "upper less lower quartile, type 7" },
    trimmed_mean_10: { meaning: "mean without a tenth of the records at either end" },
    median_ci95_low: {
      meaning: "interval of the median by order statistics, lower end; withheld where n is too small",
    },
    median_ci95_high: { meaning: "upper end" },
    median_ci_level: { meaning: "level that this interval really has" },
    geometric_mean: { meaning: "exponential of the mean logarithm; withheld unless every record is above zero" },
  },
  source: {
    citation:
      "Hyndman and Fan (1996), The American Statistician 50, 361-365; Joanes and Gill (1998), The Statistician 47, 183-189",
    basis: "published",
  },
  run: (inputs) => {
    const column = oneColumn(inputs, "x", 1);
    if (!column.ok) return column;
    const level = levelFrom(inputs);
    if (!level.ok) return level;
    const asked = inputs.quantiles_at ?? QUANTILES;
    const at: unknown = typeof asked === "number" ? [asked] : asked;
    if (!Array.isArray(at) || !at.every(isShare))
      return declined("out-of-domain", { name: "quantiles_at", needed: "numbers from 0 to 1" });
    const { values, setAside } = column.value;
    const fields = momentFields(values, level.value);
    if (!Number.isFinite(fields.mean) || !Number.isFinite(fields.sd_population))
      return declined("too-large", { name: "x", most: "1e150" });
    return succeeded({
      n: values.length,
      set_aside: setAside,
      ...fields,
      quantiles_at: at,
      ...orderFields(Float64Array.from(values).sort(), at, level.value),
      geometric_mean: geometricMean(values),
    });
  },
};
