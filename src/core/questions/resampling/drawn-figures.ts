import type { Generator } from "../../base/index.ts";
import { fillIndices } from "../../numerics/index.ts";
import type { FigureOf } from "./figure-of.ts";
import type { Units } from "./units-of-records.ts";

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
