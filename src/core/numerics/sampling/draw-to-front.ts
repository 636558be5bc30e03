import type { Generator } from "../../base/index.ts";
import { indexFromWord } from "./fill-indices.ts";

/**
 * Moves a random choice of `size` values to the front, every choice equally likely whatever the order before; the rest stand behind.
 * values: changed in place, up to 2^21 of them; words: room for `size` words, whose content does not matter.
 * Source: the first steps of Fisher and Yates's shuffle; R. Durstenfeld (1964), Communications of the ACM 7, 420.
 */
export function drawToFront(values: Float64Array, size: number, generator: Generator, words: Uint32Array): void {
  generator.fillWords(words);
  for (let i = 0; i < size; i++) {
    const j = i + indexFromWord(words[i] as number, values.length - i, generator);
    const taken = values[j] as number;
    values[j] = values[i] as number;
    values[i] = taken;
  }
}
