import { normalLowerTail, normalQuantile } from "../../numerics/index.ts";

export type BcaLevels = {
  readonly z0: number;
  readonly acceleration: number;
  readonly low: number;
  readonly high: number;
};

/** Differences below this share of the figure's spread are ties that rounding has parted. */
const TIE = 1e-12;

/**
 * Levels at which the law of resamples is read, corrected for bias and for a spread that changes with the figure (BCa).
 * sorted: figures of resamples in rising order; estimate; leftOut: the figure with each unit left out; level of the interval.
 * z0 counts ties with the estimate as one half; acceleration = sum u^3 / (6 (sum u^2)^1.5), u = mean less each left-out figure; zero where those agree.
 * Source: Efron (1987), JASA 82, 171-185; Efron and Tibshirani (1993), An Introduction to the Bootstrap, chapter 14.
 */
export function bcaLevels(sorted: Float64Array, estimate: number, leftOut: Float64Array, level: number): BcaLevels {
  const slack = TIE * Math.max(Math.abs(estimate), (sorted.at(-1) ?? 0) - (sorted[0] ?? 0));
  let below = 0;
  for (const figure of sorted) below += figure < estimate - slack ? 1 : figure <= estimate + slack ? 0.5 : 0;
  const z0 = normalQuantile(below / sorted.length);
  const centre = leftOut.reduce((sum, figure) => sum + figure, 0) / leftOut.length;
  let [squares, cubes] = [0, 0];
  for (const figure of leftOut) {
    squares += (centre - figure) ** 2;
    cubes += (centre - figure) ** 3;
  }
  const acceleration = squares > 0 ? cubes / (6 * squares ** 1.5) : 0;
  const corrected = (p: number) => {
    const z = z0 + normalQuantile(p);
    return normalLowerTail(z0 + z / (1 - acceleration * z));
  };
  return { z0, acceleration, low: corrected((1 - level) / 2), high: corrected((1 + level) / 2) };
}
