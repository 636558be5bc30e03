import type { Generator } from "../../base/index.ts";
import { indexFromWord } from "./fill-indices.ts";

/**
 * Sums of x[i] y[i] with y shuffled within blocks, one a draw (Fisher and Yates's shuffle; every order of a block is equally likely).
 * x, y: finite, one length up to 2^21; starts: first place of each block, ascending from 0, and the length at the end.
 * draws: whole, from 0. Returns that many sums, relative n ulp of sum |x y|; x and y are left as they are.
 * Source: R. Durstenfeld (1964), Communications of the ACM 7, 420.
 */
export function shuffledProductSums(
  x: Float64Array,
  y: Float64Array,
  starts: Int32Array,
  draws: number,
  generator: Generator,
): Float64Array {
  const own = Float64Array.from(y);
  const words = new Uint32Array(y.length);
  const sums = new Float64Array(draws);
  for (let draw = 0; draw < draws; draw++) {
    generator.fillWords(words);
    let sum = 0;
    for (let block = 1; block < starts.length; block++) {
      const start = starts[block - 1] as number;
      for (let i = (starts[block] as number) - 1; i >= start; i--) {
        const bound = i - start + 1;
        const word = words[i] as number;
        const low = Math.imul(word, bound) >>> 0;
        const j = start + (low < bound ? indexFromWord(word, bound, generator) : (word * bound * 2 ** -32) | 0);
        const taken = own[j] as number;
        own[j] = own[i] as number;
        own[i] = taken;
        sum += (x[i] as number) * taken;
      }
    }
    sums[draw] = sum;
  }
  return sums;
}
