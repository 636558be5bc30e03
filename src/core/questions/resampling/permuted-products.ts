// The law of sum u v over orders of v, within blocks: every order where they are few, drawn orders where they are many.
import type { Generator } from "../../base/index.ts";
import { randomPlaces } from "../../numerics/index.ts";

/** Places of each block's records, one list a block. */
export type Blocks = readonly Int32Array[];

/** How many orders there are: the product of factorials; Infinity beyond doubles. */
export const ordersOf = (blocks: Blocks): number =>
  blocks.reduce((product, places) => {
    let orders = product;
    for (let k = 2; k <= places.length; k++) orders *= k;
    return orders;
  }, 1);

/** Calls `take` with the sum for every order of v within the blocks (Heap's way through orders, block by block). */
export function everyProduct(u: Float64Array, v: Float64Array, blocks: Blocks, take: (sum: number) => void): void {
  const order = v.slice();
  const swap = (a: number, b: number) => {
    const kept = order[a] as number;
    order[a] = order[b] as number;
    order[b] = kept;
  };
  const productAt = (block: number): void => {
    const places = blocks[block];
    if (places === undefined) {
      let sum = 0;
      for (let i = 0; i < u.length; i++) sum += (u[i] as number) * (order[i] as number);
      take(sum);
      return;
    }
    const permute = (size: number): void => {
      if (size <= 1) {
        productAt(block + 1);
        return;
      }
      for (let i = 0; i < size; i++) {
        permute(size - 1);
        if (i < size - 1) swap(places[size % 2 === 0 ? i : 0] as number, places[size - 1] as number);
      }
    };
    permute(places.length);
  };
  productAt(0);
}

/** The sum for each of `draws` orders of v, shuffled within the blocks. */
export function drawnProducts(
  u: Float64Array,
  v: Float64Array,
  blocks: Blocks,
  draws: number,
  stream: Generator,
): Float64Array {
  const sums = new Float64Array(draws);
  const fill = randomPlaces(stream);
  // Each block's u and v side by side, so that a shuffle stays within a short list.
  const own = blocks.map((places) => ({
    u: Float64Array.from(places, (at) => u[at] as number),
    v: Float64Array.from(places, (at) => v[at] as number),
    drawn: new Int32Array(places.length),
  }));
  for (let draw = 0; draw < draws; draw++) {
    let sum = 0;
    for (const { u: fixed, v: order, drawn } of own) {
      fill(drawn, 0x40000000);
      for (let i = order.length - 1; i >= 0; i--) {
        const j = (((drawn[i] as number) * (i + 1)) / 0x40000000) | 0;
        const kept = order[j] as number;
        order[j] = order[i] as number;
        order[i] = kept;
        sum += kept * (fixed[i] as number);
      }
    }
    sums[draw] = sum;
  }
  return sums;
}

/** Calls `take` with the sum of `size` of the values, for every choice of them. */
export function everyChoice(values: Float64Array, size: number, take: (sum: number) => void): void {
  const choose = (from: number, left: number, sum: number): void => {
    if (left === 0) {
      take(sum);
      return;
    }
    for (let at = from; at <= values.length - left; at++) choose(at + 1, left - 1, sum + (values[at] as number));
  };
  choose(0, size, 0);
}

export const permutedProducts = { ordersOf, everyProduct, drawnProducts, everyChoice } as const;
