import { everyMultiset, multisetsOf } from "../../numerics/index.ts";
import type { FigureOf } from "./figure-of.ts";
import type { Units } from "./units-of-records.ts";

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
