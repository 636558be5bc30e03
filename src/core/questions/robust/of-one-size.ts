import { mean, median } from "../../numerics/index.ts";

/** A fit of the columns as they are brought to one size: p coefficients, the constant first, and their covariance, row by row. */
type Fit = { readonly coefficients: Float64Array; readonly covariance: Float64Array };

const about = (values: Float64Array) => {
  const middle = median(values);
  const sizes = values.map((value) => Math.abs(value - middle));
  const size = median(sizes) || mean(sizes) || 1;
  return { middle, size, alike: values.map((value) => (value - middle) / size) };
};

/**
 * y and its columns less their medians, over the median of what is left, so that neither units, nor readings far from zero, nor one wild record take digits from a
 * fit; and the way back. columns: without the constant, which `X` holds first. `plane` and `errors` give constant and slopes, and their standard errors, in the units given.
 */
export function ofOneSize(columns: readonly Float64Array[], y: Float64Array) {
  const [own, parts] = [about(y), columns.map(about)];
  return {
    X: [new Float64Array(y.length).fill(1), ...parts.map(({ alike }) => alike)],
    y: own.alike,
    size: own.size,
    plane({ coefficients }: Pick<Fit, "coefficients">): Float64Array {
      const slopes = parts.map(({ size }, j) => (own.size / size) * (coefficients[j + 1] as number));
      const shift = slopes.reduce((sum, slope, j) => sum + slope * (parts[j]?.middle as number), 0);
      return Float64Array.of(own.middle + own.size * (coefficients[0] as number) - shift, ...slopes);
    },
    errors({ covariance }: Pick<Fit, "covariance">): Float64Array {
      const p = parts.length + 1;
      const towards = [1, ...parts.map(({ middle, size }) => -middle / size)];
      let constant = 0;
      for (let a = 0; a < p; a++)
        for (let b = 0; b < p; b++)
          constant += (towards[a] as number) * (towards[b] as number) * (covariance[a * p + b] as number);
      const slopes = parts.map(({ size }, j) => (own.size / size) * rootOf(covariance[(j + 1) * (p + 1)] as number));
      return Float64Array.of(own.size * rootOf(constant), ...slopes);
    },
  };
}

/** NaN for a variance that is none, which few records may give. */
const rootOf = (variance: number): number => (variance > 0 ? Math.sqrt(variance) : Number.NaN);
