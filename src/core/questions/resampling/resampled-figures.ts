// A figure over resamples: units drawn with replacement within their strata, every way once or many times at random.
import type { Generator } from "../../base/index.ts";
import { everyMultiset, fillIndices, multisetsOf } from "../../numerics/index.ts";
import { type ResampledStatistic, SUMS } from "./resampled-statistic.ts";
import type { Units } from "./units-of-records.ts";

/** The figure where unit u takes part counts[u] times. */
type FigureOf = (counts: Int32Array) => number;

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

/** The figures of `draws` resamples. */
export function drawnFigures(units: Units, of: FigureOf, draws: number, generator: Generator): Float64Array {
  const counts = new Int32Array(units.count);
  const figures = new Float64Array(draws);
  const strata = Array.from(units.starts.subarray(1), (end, at) => {
    const start = units.starts[at] as number;
    return { start, places: new Int32Array(end - start), words: new Uint32Array(end - start) };
  });
  for (let draw = 0; draw < draws; draw++) {
    counts.fill(0);
    for (const { start, places, words } of strata) {
      fillIndices(generator, places, places.length, words);
      for (let i = 0; i < places.length; i++) {
        const unit = start + (places[i] as number);
        counts[unit] = (counts[unit] as number) + 1;
      }
    }
    figures[draw] = of(counts);
  }
  return figures;
}

/** How many unlike resamples there are, order aside. */
export const unlikeResamples = ({ starts }: Units): number =>
  starts.subarray(1).reduce((product, end, at) => product * multisetsOf(end - (starts[at] as number)), 1);

/** The figure of every unlike resample, and of how many drawn in order it stands for. Only for few of them (unlikeResamples). */
export function everyFigure(
  units: Units,
  of: FigureOf,
): { readonly figures: Float64Array; readonly weights: Float64Array } {
  const size = unlikeResamples(units);
  const [figures, weights] = [new Float64Array(size), new Float64Array(size)];
  const counts = new Int32Array(units.count);
  let at = 0;
  const within = (stratum: number, weight: number): void => {
    if (stratum === units.starts.length) {
      weights[at] = weight;
      figures[at++] = of(counts);
      return;
    }
    const [start, end] = [units.starts[stratum - 1] as number, units.starts[stratum] as number];
    everyMultiset(end - start, (own, ways) => {
      counts.set(own, start);
      within(stratum + 1, weight * ways);
    });
  };
  within(1, 1);
  return { figures, weights };
}

export const resampledFigures = { figureOf, leftOutOnce, drawnFigures, everyFigure, unlikeResamples } as const;
