import { figureOf } from "./figure-of.ts";
import { type ResampledStatistic, SUMS } from "./resampled-statistics.ts";
import type { Units } from "./units-of-records.ts";

/** The figure with each unit left out in turn. */
export function leftOutOnce(units: Units, statistic: ResampledStatistic, trim: number): Float64Array {
  const figures = new Float64Array(units.count);
  const counts = new Int32Array(units.count).fill(1);
  if ("fromSums" in statistic) {
    const all = new Float64Array(SUMS);
    const rest = new Float64Array(SUMS);
    for (let at = 0; at < units.sums.length; at++)
      all[at % SUMS] = (all[at % SUMS] as number) + (units.sums[at] as number);
    for (let unit = 0; unit < units.count; unit++) {
      for (let k = 0; k < SUMS; k++) rest[k] = (all[k] as number) - (units.sums[unit * SUMS + k] as number);
      figures[unit] = statistic.fromSums(rest);
    }
    return figures;
  }
  const of = figureOf(units, statistic, trim);
  for (let unit = 0; unit < units.count; unit++) {
    counts[unit] = 0;
    figures[unit] = of(counts);
    counts[unit] = 1;
  }
  return figures;
}
