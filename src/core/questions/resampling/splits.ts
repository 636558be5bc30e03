import type { Generator } from "../../base/index.ts";
import { drawToFront, everySubset, mean, median, subsetsOf } from "../../numerics/index.ts";
import type { Arrangements } from "./arrangements.ts";

/** The figure of the values that stand in the group that is drawn, and of the rest. */
type OfParts = (front: Float64Array, rest: Float64Array) => number;

const sumOf = (values: Float64Array): number => {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i] as number;
  return sum;
};
const ofParts = {
  "difference-of-means": (front, rest) => sumOf(front) / front.length - sumOf(rest) / rest.length,
  "difference-of-medians": (front, rest) => median(front) - median(rest),
} as const satisfies Readonly<Record<string, OfParts>>;

export type SplitFigure = keyof typeof ofParts;
export const splitFigures = Object.keys(ofParts);

/** Whether a stands before b: by number of values, then by its values in rising order. */
function comesFirst(a: Float64Array, b: Float64Array): boolean {
  if (a.length !== b.length) return a.length < b.length;
  const at = a.findIndex((value, i) => value !== b[i]);
  return at < 0 || (a[at] as number) < (b[at] as number);
}

/**
 * Which records are in the first group: mean (or median) of a less that of b. a, b: finite, at least one each. The smaller group is the one that is
 * drawn, so that swapping the two turns every sign and nothing else. Values are taken less their common mean.
 */
export function splits(a: Float64Array, b: Float64Array, figure: SplitFigure): Arrangements {
  const of: OfParts = ofParts[figure];
  const [sortedA, sortedB] = [a.slice().sort(), b.slice().sort()];
  const isAFirst = comesFirst(sortedA, sortedB);
  const sign = isAFirst ? 1 : -1;
  const size = Math.min(a.length, b.length);
  const pooled = Float64Array.from([...a, ...b]).sort();
  const centre = mean(pooled);
  const values = pooled.map((value) => value - centre);
  const n = values.length;
  const centred = (own: Float64Array) => own.map((value) => value - centre);
  const signed = (own: Float64Array, rest: Float64Array) => sign * of(own, rest);
  const count = subsetsOf(n, size);
  return {
    count,
    seen: isAFirst ? signed(centred(sortedA), centred(sortedB)) : signed(centred(sortedB), centred(sortedA)),
    scale: values.reduce((most, value) => Math.max(most, Math.abs(value)), 0),
    every: () => {
      const figures = new Float64Array(count);
      const [own, rest] = [new Float64Array(size), new Float64Array(n - size)];
      let at = 0;
      everySubset(n, size, (chosen) => {
        parted(values, chosen, own, rest);
        figures[at++] = signed(own, rest);
      });
      return figures;
    },
    drawn: (draws: number, generator: Generator) => {
      const [order, words] = [values.slice(), new Uint32Array(size)];
      const [own, rest] = [order.subarray(0, size), order.subarray(size)];
      const figures = new Float64Array(draws);
      for (let draw = 0; draw < draws; draw++) {
        drawToFront(order, size, generator, words);
        figures[draw] = signed(own, rest);
      }
      return figures;
    },
  };
}

/** Writes the chosen values to `own` and the others to `rest`, each in their order. */
function parted(values: Float64Array, chosen: Int32Array, own: Float64Array, rest: Float64Array): void {
  let taken = 0;
  for (let i = 0; i < values.length; i++) {
    if (chosen[taken] === i) own[taken++] = values[i] as number;
    else rest[i - taken] = values[i] as number;
  }
}
