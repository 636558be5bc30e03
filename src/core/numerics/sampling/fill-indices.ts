import type { Generator } from "../../base/index.ts";

const WORDS = 2 ** 32;
const single = new Uint32Array(1);

/**
 * Whole number below a bound out of a word, every one equally likely: the high part of word times bound. A word whose low part falls among the
 * 2^32 mod bound surplus ones is drawn anew. word: uniform on 0 to 2^32 - 1; bound: whole, 1 to 2^21, so that the product is exact.
 * Source: D. Lemire (2019), ACM Trans. Modeling and Computer Simulation 29, 3.
 */
export function indexFromWord(word: number, bound: number, generator: Generator): number {
  const low = Math.imul(word, bound) >>> 0;
  if (low < bound && low < WORDS % bound) {
    generator.fillWords(single);
    return indexFromWord(single[0] as number, bound, generator);
  }
  return Math.floor((word * bound) / WORDS);
}

/**
 * Fills `indices` with independent whole numbers from 0 to bound - 1. words: room for as many words, whose content does not matter;
 * bound: whole, 1 to 2^21.
 */
export function fillIndices(generator: Generator, indices: Int32Array, bound: number, words: Uint32Array): void {
  generator.fillWords(words);
  for (let i = 0; i < indices.length; i++) {
    const word = words[i] as number;
    indices[i] =
      Math.imul(word, bound) >>> 0 < bound ? indexFromWord(word, bound, generator) : (word * bound * 2 ** -32) | 0;
  }
}
