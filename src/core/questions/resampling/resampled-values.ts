// The law of a figure over resamples: units (records, or whole clusters of them) drawn with replacement, all at once or many times at random.
import type { Generator } from "../../base/index.ts";
import { randomPlaces } from "../../numerics/index.ts";
import { type ResampledStatistic, SUMS } from "./resampled-statistic.ts";

/** Units that are drawn: their sums, six a unit, and where the values of each stand: unit u holds values[ends[u - 1] .. ends[u]]. */
export type Units = {
  readonly count: number;
  readonly sums: Float64Array;
  readonly values: Float64Array;
  readonly ends: Int32Array;
};

/** The figure of the units at `places`. */
function evaluator(units: Units, statistic: ResampledStatistic): (places: Int32Array) => number {
  if ("fromSums" in statistic) {
    const { fromSums } = statistic;
    const { sums } = units;
    const total = new Float64Array(SUMS);
    return (places) => {
      let [n, x, y, xx, xy, yy] = [0, 0, 0, 0, 0, 0];
      for (let i = 0; i < places.length; i++) {
        const at = (places[i] as number) * SUMS;
        n += sums[at] as number;
        x += sums[at + 1] as number;
        y += sums[at + 2] as number;
        xx += sums[at + 3] as number;
        xy += sums[at + 4] as number;
        yy += sums[at + 5] as number;
      }
      total[0] = n;
      total[1] = x;
      total[2] = y;
      total[3] = xx;
      total[4] = xy;
      total[5] = yy;
      return fromSums(total, 0);
    };
  }
  const { fromValues } = statistic;
  const { values, ends } = units;
  const start = (unit: number) => (unit === 0 ? 0 : (ends[unit - 1] as number));
  return (places) => {
    let size = 0;
    for (const unit of places) size += (ends[unit] as number) - start(unit);
    const drawn = new Float64Array(size);
    let at = 0;
    for (const unit of places) {
      drawn.set(values.subarray(start(unit), ends[unit]), at);
      at += (ends[unit] as number) - start(unit);
    }
    return fromValues(drawn);
  };
}

/** The figure of all units, each once. */
export const figureOfAll = (units: Units, statistic: ResampledStatistic): number =>
  evaluator(units, statistic)(Int32Array.from({ length: units.count }, (_, at) => at));

/** The figure with each unit left out in turn. */
export function leftOutOnce(units: Units, statistic: ResampledStatistic): Float64Array {
  const figures = new Float64Array(units.count);
  if ("fromSums" in statistic) {
    const all = new Float64Array(SUMS);
    for (let i = 0; i < units.sums.length; i++) all[i % SUMS] = (all[i % SUMS] as number) + (units.sums[i] as number);
    for (let unit = 0; unit < units.count; unit++)
      figures[unit] = statistic.fromSums(
        all.map((sum, k) => sum - (units.sums[unit * SUMS + k] as number)),
        0,
      );
    return figures;
  }
  const figureOf = evaluator(units, statistic);
  const places = Int32Array.from({ length: units.count - 1 }, (_, at) => at + 1);
  for (let unit = 0; unit < units.count; unit++) {
    figures[unit] = figureOf(places);
    if (unit < places.length) places[unit] = unit;
  }
  return figures;
}

/** The figures of `draws` resamples. */
export function drawnFigures(
  units: Units,
  statistic: ResampledStatistic,
  draws: number,
  stream: Generator,
): Float64Array {
  const figureOf = evaluator(units, statistic);
  const [fill, places, figures] = [randomPlaces(stream), new Int32Array(units.count), new Float64Array(draws)];
  for (let draw = 0; draw < draws; draw++) {
    fill(places, units.count);
    figures[draw] = figureOf(places);
  }
  return figures;
}

/** The figures of every resample there is, count^count of them, each once. */
export function everyFigure(units: Units, statistic: ResampledStatistic): Float64Array {
  const figureOf = evaluator(units, statistic);
  const places = new Int32Array(units.count);
  return Float64Array.from({ length: units.count ** units.count }, () => {
    const figure = figureOf(places);
    for (let i = 0; i < places.length; i++) {
      const next = (places[i] as number) + 1;
      places[i] = next % units.count;
      if (next < units.count) break;
    }
    return figure;
  });
}

export const resampledValues = { figureOfAll, leftOutOnce, drawnFigures, everyFigure } as const;
