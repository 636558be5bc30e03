// A figure under every arrangement of the records that chance could have made, and under drawn ones.
import type { Generator } from "../../base/index.ts";
import {
  drawnSignedSums,
  midranks,
  outerSums,
  permutedProductSums,
  shuffledProductSums,
  signedSums,
} from "../../numerics/index.ts";
import { canonicalOrder, codesByPlace } from "./canonical-order.ts";

/** What is rearranged: how many arrangements there are, the figure seen, its figure in all of them or in drawn ones. */
export type Arrangements = {
  readonly count: number;
  readonly seen: number;
  /** How large the figure could be: ties of figures are told by it. */
  readonly scale: number;
  readonly every: () => Float64Array;
  readonly drawn: (draws: number, generator: Generator) => Float64Array;
};

const times = (sums: Float64Array, factor: number): Float64Array => sums.map((sum) => factor * sum);

/** The signs of paired differences: their mean. differences: finite, at least one. */
export function flips(differences: Float64Array): Arrangements {
  const terms = differences.slice().sort();
  const factor = 1 / terms.length;
  return {
    count: 2 ** terms.length,
    seen: factor * terms.reduce((sum, term) => sum + term, 0),
    scale: factor * terms.reduce((sum, term) => sum + Math.abs(term), 0),
    every: () => times(signedSums(terms), factor),
    drawn: (draws, generator) => times(drawnSignedSums(terms, draws, generator), factor),
  };
}

/** Takes from each value the mean of its block. starts: first place of each block, and the length at the end. */
function deviations(values: Float64Array, starts: Int32Array): Float64Array {
  const left = values.slice();
  for (let block = 1; block < starts.length; block++) {
    const own = left.subarray(starts[block - 1], starts[block]);
    const first = own[0] ?? 0;
    const mean = own.reduce((sum, value) => sum + (value - first) / own.length, 0);
    for (let i = 0; i < own.length; i++) own[i] = (own[i] as number) - first - mean;
  }
  return left;
}

/** Whether more than rounding is left of values after the means of blocks were taken out. */
const varies = (left: Float64Array, values: Float64Array): boolean => {
  const largest = values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  return left.some((value) => Math.abs(value) > 8 * Number.EPSILON * largest);
};

export type PairingFigure = "pearson" | "spearman" | "slope";

/**
 * Which y goes with which x within blocks: correlation (of ranks over all records for "spearman") or slope of y on x, of the deviations from the means of
 * blocks. x, y: finite, of one length; codes: block of each record. Null where one does not vary within blocks.
 */
export function pairings(
  x: Float64Array,
  y: Float64Array,
  codes: Int32Array,
  figure: PairingFigure,
): Arrangements | null {
  const byValue = canonicalOrder([x, y, codes]);
  const places = codesByPlace(Int32Array.from(byValue, (i) => codes[i] as number));
  const order = Int32Array.from(canonicalOrder([places]), (at) => byValue[at] as number);
  const starts = startsOf(places);
  const taken = [x, y].map((column) => {
    const values = Float64Array.from(order, (i) => column[i] as number);
    const own = figure === "spearman" ? midranks(values) : values;
    const left = deviations(own, starts);
    return varies(left, own) ? left : null;
  });
  const [u, v] = taken;
  if (!u || !v) return null;
  const square = (values: Float64Array) => values.reduce((sum, value) => sum + value * value, 0);
  const [uu, vv] = [square(u), square(v)];
  const factor = figure === "slope" ? 1 / uu : 1 / Math.sqrt(uu) / Math.sqrt(vv);
  const blocks = Array.from(starts.subarray(1), (end, at) => [starts[at] as number, end] as const);
  return {
    count: blocks.reduce((product, [start, end]) => product * ordersOf(end - start), 1),
    seen: factor * u.reduce((sum, value, at) => sum + value * (v[at] as number), 0),
    scale: factor * Math.sqrt(uu) * Math.sqrt(vv),
    every: () =>
      times(
        outerSums(blocks.map(([start, end]) => permutedProductSums(u.subarray(start, end), v.subarray(start, end)))),
        factor,
      ),
    drawn: (draws, generator) => times(shuffledProductSums(u, v, starts, draws, generator), factor),
  };
}

/** How many orders n things have. */
function ordersOf(n: number): number {
  let orders = 1;
  for (let k = 2; k <= n; k++) orders *= k;
  return orders;
}

/** First place of each block, and their number of records at the end. codes: 0, 1, 2 ... of each record. */
function startsOf(codes: Int32Array): Int32Array {
  const blocks = codes.reduce((most, code) => Math.max(most, code + 1), 0);
  const starts = new Int32Array(blocks + 1);
  for (const code of codes) starts[code + 1] = (starts[code + 1] as number) + 1;
  for (let block = 1; block <= blocks; block++)
    starts[block] = (starts[block] as number) + (starts[block - 1] as number);
  return starts;
}

export const arrangements = { flips, pairings } as const;
