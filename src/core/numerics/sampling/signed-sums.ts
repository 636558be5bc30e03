import type { Generator } from "../../base/index.ts";
import { outerSums } from "./outer-sums.ts";

/**
 * Sum of the terms with every choice of their signs: 2^n sums. terms: finite, at most 24.
 * @example signedSums([1, 10]) // 11, 9, -9, -11
 */
export const signedSums = (terms: ArrayLike<number>): Float64Array =>
  outerSums(Array.from(terms, (term) => [term, -term]));

/** Sums of the terms with signs drawn, each sign a coin of its own: one sum a draw. terms: finite; draws: whole, from 0. */
export function drawnSignedSums(terms: Float64Array, draws: number, generator: Generator): Float64Array {
  const words = new Uint32Array(Math.ceil(terms.length / 32));
  const sums = new Float64Array(draws);
  for (let draw = 0; draw < draws; draw++) {
    generator.fillWords(words);
    let sum = 0;
    for (let i = 0; i < terms.length; i++) {
      const isKept = (((words[i >>> 5] as number) >>> (i & 31)) & 1) === 1;
      sum += isKept ? (terms[i] as number) : -(terms[i] as number);
    }
    sums[draw] = sum;
  }
  return sums;
}
