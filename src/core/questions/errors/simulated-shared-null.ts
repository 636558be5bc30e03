import type { Generator } from "../../base/index.ts";
import { quantile, quickNormalQuantile } from "../../numerics/index.ts";
import { correlation } from "../fits/correlation.ts";
import { placeAmongDraws } from "../resampling/place-among-draws.ts";
import type { SharedMeasurement } from "./shared-measurement-null.ts";

export type SimulatedSharedNull = {
  readonly correlationLow: number;
  readonly correlationHigh: number;
  readonly slopeLow: number;
  readonly slopeHigh: number;
  /** Share of worlds without a law whose slope lies as far from the middle one as the slope found; null where none was given. */
  readonly p: number | null;
};

/**
 * What so many records would show if arithmetic alone tied y to x: correlation and slope of ln y on ln x, drawn again and again with the
 * maker's own spreads. n >= 3 records; worlds >= 100; found: the slope seen, null if none. p counts the world seen as one of them, so it is never 0.
 * Source: Davison and Hinkley (1997), Bootstrap Methods and their Application, section 4.2 (parametric Monte Carlo test).
 */
export function simulatedSharedNull(
  between: SharedMeasurement,
  n: number,
  worlds: number,
  found: number | null,
  generator: Generator,
): SimulatedSharedNull {
  const normal = () => quickNormalQuantile(generator.next() || 2 ** -54);
  const [x, y] = [new Float64Array(n), new Float64Array(n)];
  const [correlations, slopes] = [new Float64Array(worlds), new Float64Array(worlds)];
  for (let world = 0; world < worlds; world++) {
    for (let i = 0; i < n; i++) {
      const error = between.shared * normal();
      x[i] = between.xExponent * error + between.xOwn * normal();
      y[i] = between.yExponent * error + between.yOwn * normal();
    }
    const r = correlation(x, y);
    correlations[world] = r;
    slopes[world] = r * Math.sqrt(spread(y) / spread(x));
  }
  return {
    correlationLow: quantile(correlations, 0.025),
    correlationHigh: quantile(correlations, 0.975),
    slopeLow: quantile(slopes, 0.025),
    slopeHigh: quantile(slopes, 0.975),
    p: found === null ? null : placeAmongDraws(slopes, found).p,
  };
}

/** Sum of squares about the mean, for values about zero. */
function spread(values: Float64Array): number {
  let sum = 0;
  for (const value of values) sum += value;
  const mean = sum / values.length;
  let squares = 0;
  for (const value of values) squares += (value - mean) ** 2;
  return squares;
}
