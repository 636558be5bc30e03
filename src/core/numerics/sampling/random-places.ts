import type { Generator } from "../../base/index.ts";

/** Fills a list with places 0 <= place < below, each alike, and independent. */
export type RandomPlaces = (places: Int32Array, below: number) => void;

/**
 * A quick source of random places, started from a stream: xoshiro128** with its state in four local numbers, one word a place.
 * below: whole, 1 to 2^31; the share of a place is off by less than below / 2^32. What it gives depends on the stream alone.
 * Source: D. Blackman, S. Vigna (2021), ACM Trans. Math. Softw. 47, 36; place by multiplication, D. Lemire (2019), ACM Trans. Model. Comput. Simul. 29.
 */
export function randomPlaces(stream: Generator): RandomPlaces {
  const word = () => Math.floor(stream.next() * 2 ** 32) | 0;
  let [s0, s1, s2, s3] = [word(), word(), word(), word() | 1];
  return (places, below) => {
    let [a, b, c, d] = [s0, s1, s2, s3];
    for (let i = 0; i < places.length; i++) {
      const five = Math.imul(b, 5);
      const drawn = Math.imul((five << 7) | (five >>> 25), 9) >>> 0;
      const shifted = b << 9;
      c ^= a;
      d ^= b;
      b ^= c;
      a ^= d;
      c ^= shifted;
      d = (d << 11) | (d >>> 21);
      places[i] = (drawn * below) / 4294967296;
    }
    [s0, s1, s2, s3] = [a, b, c, d];
  };
}
