import { type ResampledStatistic, SUMS } from "./resampled-statistics.ts";
import type { Units } from "./units-of-records.ts";

/** The figure where unit u takes part counts[u] times. */
export type FigureOf = (counts: Int32Array) => number;

function figureOfSums({ sums }: Units, of: (total: Float64Array) => number): FigureOf {
  const total = new Float64Array(SUMS);
  return (counts) => {
    let n = 0;
    let x = 0;
    let y = 0;
    let xx = 0;
    let xy = 0;
    let yy = 0;
    for (let unit = 0, at = 0; unit < counts.length; unit++, at += SUMS) {
      const count = counts[unit] as number;
      if (count === 0) continue;
      n += count * (sums[at] as number);
      x += count * (sums[at + 1] as number);
      y += count * (sums[at + 2] as number);
      xx += count * (sums[at + 3] as number);
      xy += count * (sums[at + 4] as number);
      yy += count * (sums[at + 5] as number);
    }
    total[0] = n;
    total[1] = x;
    total[2] = y;
    total[3] = xx;
    total[4] = xy;
    total[5] = yy;
    return of(total);
  };
}

/** A function that takes the figure of a resample. */
export function figureOf(units: Units, statistic: ResampledStatistic, trim: number): FigureOf {
  if ("fromSums" in statistic) return figureOfSums(units, statistic.fromSums);
  const { values, unitOf } = units;
  const own = new Int32Array(values.length);
  return (counts) => {
    for (let i = 0; i < own.length; i++) own[i] = counts[unitOf[i] as number] as number;
    return statistic.fromValues(values, own, trim);
  };
}
