// A figure under every arrangement of the records that chance could have made, as a straight function of one sum.
import type { Generator } from "../../base/index.ts";
import { midranks } from "../../numerics/index.ts";
import { drawnFlips, everyFlip } from "./flipped-sums.ts";
import { type Blocks, drawnProducts, everyChoice, everyProduct, ordersOf } from "./permuted-products.ts";

/** What is rearranged: how many arrangements there are, the sum seen, and the sums of all or of some drawn ones. figure = factor * sum + offset. */
export type Arrangements = {
  readonly count: number;
  readonly seen: number;
  readonly every: (take: (sum: number) => void) => void;
  readonly drawn: (draws: number, stream: Generator) => Float64Array;
  readonly factor: number;
  readonly offset: number;
};

const total = (values: Float64Array) => values.reduce((sum, value) => sum + value, 0);

/** Which records are in the first group: mean of a less mean of b, from the sum of the values in a. */
export function splits(a: Float64Array, b: Float64Array): Arrangements {
  const all = Float64Array.from([...a, ...b]);
  const origin = all[0] ?? 0;
  const values = all.map((value) => value - origin);
  let count = 1;
  for (let k = 1; k <= a.length; k++) count = (count * (b.length + k)) / k;
  const inA = values.map((_, at) => (at < a.length ? 1 : 0));
  const block = Int32Array.from(values, (_, at) => at);
  return {
    count: Math.round(count),
    seen: total(values.subarray(0, a.length)),
    every: (take) => everyChoice(values, a.length, take),
    drawn: (draws, stream) => drawnProducts(inA, values, [block], draws, stream),
    factor: 1 / a.length + 1 / b.length,
    offset: -total(values) / b.length,
  };
}

/** The signs of paired differences: their mean. */
export const flips = (differences: Float64Array): Arrangements => ({
  count: 2 ** differences.length,
  seen: total(differences),
  every: (take) => everyFlip(differences, take),
  drawn: (draws, stream) => drawnFlips(differences, draws, stream),
  factor: 1 / differences.length,
  offset: 0,
});

/** Values less the mean of their block. */
function deviations(values: Float64Array, blocks: Blocks): Float64Array {
  const left = values.slice();
  for (const places of blocks) {
    const first = values[places[0] ?? 0] as number;
    const mean = places.reduce((sum, at) => sum + ((values[at] as number) - first) / places.length, 0);
    for (const at of places) left[at] = (values[at] as number) - first - mean;
  }
  return left;
}

/** Which y goes with which x, within blocks: correlation (of ranks for "spearman") or slope of the deviations from the means of blocks; null without spread. */
export function pairings(
  x: Float64Array,
  y: Float64Array,
  blocks: Blocks,
  statistic: "pearson" | "spearman" | "slope",
): Arrangements | null {
  const isRanks = statistic === "spearman";
  const [u, v] = [isRanks ? midranks(x) : x, isRanks ? midranks(y) : y].map((one) => deviations(one, blocks)) as [
    Float64Array,
    Float64Array,
  ];
  const square = (values: Float64Array) => values.reduce((sum, value) => sum + value * value, 0);
  const [uu, vv] = [square(u), square(v)];
  if (!(uu > 0) || !(vv > 0)) return null;
  return {
    count: ordersOf(blocks),
    seen: u.reduce((sum, value, at) => sum + value * (v[at] as number), 0),
    every: (take) => everyProduct(u, v, blocks, take),
    drawn: (draws, stream) => drawnProducts(u, v, blocks, draws, stream),
    factor: statistic === "slope" ? 1 / uu : 1 / Math.sqrt(uu * vv),
    offset: 0,
  };
}

export const arrangements = { splits, flips, pairings } as const;
