import type { Generator } from "../../base/index.ts";

/** FNV-1a over the UTF-16 units of a name, 32 bits. */
function hashOf(name: string, start: number): number {
  let hash = (start ^ 0x811c9dc5) >>> 0;
  for (let i = 0; i < name.length; i++) hash = Math.imul(hash ^ name.charCodeAt(i), 0x01000193) >>> 0;
  return hash;
}

/** One step of splitmix32: state in, well mixed word out. */
function mixed(state: number): number {
  let z = (state + 0x9e3779b9) >>> 0;
  z = Math.imul(z ^ (z >>> 16), 0x21f0aaad) >>> 0;
  z = Math.imul(z ^ (z >>> 15), 0x735a2d97) >>> 0;
  return (z ^ (z >>> 15)) >>> 0;
}

/**
 * A seeded stream of random numbers: xoshiro128** started by splitmix32. `seed`: any finite number, its low 32 bits and its quotient by
 * 2^32 both count. `fillWords` gives the same words as are behind `next`, a list at a time. `split(name)` depends on the seed and the name only, never on how many numbers were drawn.
 * Period 2^128 - 1; `next` has 53 bits from two words.
 * Source: D. Blackman, S. Vigna (2021), ACM Trans. Math. Softw. 47, 36; public domain code of the authors.
 */
export function generatorFromSeed(seed: number): Generator {
  const low = seed >>> 0;
  const high = Math.floor(seed / 2 ** 32) >>> 0;
  const s = new Uint32Array(4);
  let state = mixed(low ^ mixed(high));
  for (let i = 0; i < 4; i++) {
    state = mixed(state);
    s[i] = state;
  }
  if ((s[0] as number | 0) === 0 && s[1] === 0 && s[2] === 0 && s[3] === 0) s[0] = 1;
  const rotated = (x: number, by: number) => ((x << by) | (x >>> (32 - by))) >>> 0;
  const word = (): number => {
    const second = s[1] as number;
    const result = Math.imul(rotated(Math.imul(second, 5) >>> 0, 7), 9) >>> 0;
    const shifted = (second << 9) >>> 0;
    s[2] = (s[2] as number) ^ (s[0] as number);
    s[3] = (s[3] as number) ^ second;
    s[1] = second ^ (s[2] as number);
    s[0] = (s[0] as number) ^ (s[3] as number);
    s[2] = (s[2] as number) ^ shifted;
    s[3] = rotated(s[3] as number, 11);
    return result;
  };
  /** The steps of `word`, with the state in four locals for the whole list. */
  const fillWords = (words: Uint32Array): void => {
    let [a, b, c, d] = [s[0] as number | 0, s[1] as number | 0, s[2] as number | 0, s[3] as number | 0];
    for (let i = 0; i < words.length; i++) {
      const fivefold = Math.imul(b, 5);
      words[i] = Math.imul((fivefold << 7) | (fivefold >>> 25), 9);
      const shifted = b << 9;
      c ^= a;
      d ^= b;
      b ^= c;
      a ^= d;
      c ^= shifted;
      d = (d << 11) | (d >>> 21);
    }
    s[0] = a;
    s[1] = b;
    s[2] = c;
    s[3] = d;
  };
  return {
    fillWords,
    next: () => ((word() >>> 5) * 2 ** 26 + (word() >>> 6)) / 2 ** 53,
    split: (name) => generatorFromSeed(hashOf(name, low) * 2 ** 20 + (mixed(high ^ hashOf(name, 7)) >>> 12)),
  };
}
