import { median } from "./median.ts";

/**
 * Median absolute deviation from the median, scaled by 1.4826 to estimate the standard deviation of normal data; 0 when half the values
 * agree, so never divide by it. x: at least one finite number.
 * Source: F. R. Hampel (1974), JASA 69, 383-393.
 */
export function medianAbsoluteDeviation(x: ArrayLike<number>): number {
  const centre = median(x);
  return 1.4826 * median(Float64Array.from(x, (value) => Math.abs(value - centre)));
}
