// The upper tail of the range for one number of means, ready to be asked often: the integral is taken at a few places a stretch, once.
import { rangeUpperTail } from "./range-upper-tail.ts";

/** P(range > w) for one number of means. */
export type RangeTail = (w: number) => number;

const STRETCH = 1.5;
const PLACES = 18;
/** Beyond this the tail is below 1e-140, and counts for nothing in any sum. */
const END = 36;

/** Coefficients of the Chebyshev series of log P(range > w) over one stretch from `start`. */
function seriesFrom(start: number, means: number): Float64Array {
  const values = Float64Array.from({ length: PLACES }, (_, i) =>
    Math.log(rangeUpperTail(start + (STRETCH / 2) * (1 + Math.cos((Math.PI * (i + 0.5)) / PLACES)), means)),
  );
  return Float64Array.from(
    { length: PLACES },
    (_, k) =>
      values.reduce((sum, value, i) => sum + value * Math.cos((Math.PI * k * (i + 0.5)) / PLACES), 0) *
      ((k === 0 ? 1 : 2) / PLACES),
  );
}

/**
 * The upper tail of the range of `means` standard normal values as a function of w, its logarithm by Chebyshev series over stretches of 1.5 that are
 * worked out when they are first needed. means >= 2 whole. Relative 1e-11 of rangeUpperTail; 0 beyond w = 36.
 * Source: L. N. Trefethen (2013), Approximation Theory and Approximation Practice, chapters 3 and 4 (interpolation, Clenshaw's sum).
 */
export function rangeTail(means: number): RangeTail {
  const stretches: (Float64Array | undefined)[] = [];
  return (w) => {
    if (w <= 0) return 1;
    if (!(w < END)) return 0;
    const at = Math.floor(w / STRETCH);
    const series = stretches[at] ?? seriesFrom(at * STRETCH, means);
    stretches[at] = series;
    const t = (2 * (w - at * STRETCH)) / STRETCH - 1;
    let [one, two] = [0, 0];
    for (let k = PLACES - 1; k >= 1; k--) {
      const next = 2 * t * one - two + (series[k] as number);
      two = one;
      one = next;
    }
    return Math.min(1, Math.exp(t * one - two + (series[0] as number)));
  };
}
