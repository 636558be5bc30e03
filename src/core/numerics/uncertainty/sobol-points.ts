import type { Generator } from "../../base/index.ts";

/** Coefficients of the primitive polynomial (inner ones, as bits) and the first direction numbers of each coordinate after the first. */
const DIRECTIONS: readonly (readonly [number, readonly number[]])[] = [
  [0, [1]],
  [1, [1, 3]],
  [1, [1, 3, 1]],
  [2, [1, 1, 1]],
  [1, [1, 1, 3, 3]],
  [4, [1, 3, 5, 13]],
  [2, [1, 1, 5, 5, 17]],
  [4, [1, 1, 5, 5, 5]],
  [7, [1, 1, 7, 11, 19]],
  [11, [1, 1, 5, 1, 1]],
  [13, [1, 1, 1, 3, 11]],
  [14, [1, 3, 5, 5, 31]],
  [1, [1, 3, 3, 9, 7, 49]],
  [13, [1, 1, 1, 15, 21, 21]],
  [16, [1, 3, 1, 13, 27, 49]],
];
/** Coordinates that have direction numbers. */
export const SOBOL_COORDINATES = DIRECTIONS.length + 1;

/** The 32 direction words of a coordinate: the recurrence of its polynomial. */
function directionWords(coordinate: number): Uint32Array {
  const words = new Uint32Array(32);
  if (coordinate === 0) return words.map((_, k) => 2 ** (31 - k));
  const [inner, start] = DIRECTIONS[coordinate - 1] as readonly [number, readonly number[]];
  const degree = start.length;
  for (let k = 0; k < 32; k++) {
    if (k < degree) {
      words[k] = (start[k] as number) << (31 - k);
      continue;
    }
    const old = words[k - degree] as number;
    let word = old ^ (old >>> degree);
    for (let j = 1; j < degree; j++) if ((inner >>> (degree - 1 - j)) & 1) word ^= words[k - j] as number;
    words[k] = word;
  }
  return words;
}

/**
 * One coordinate of Sobol's points, shifted by chance: evenly spread numbers in (0, 1) that fill the cube together with the other coordinates.
 * Each point alone is uniform, whatever the shift, so means over them have no bias; their error falls nearly as 1/n where that of plain draws
 * falls as 1/sqrt(n). coordinate: 0 to SOBOL_COORDINATES - 1, one an input; generator: one for each coordinate, it makes the shift.
 * Result: a function that fills a buffer with the next points.
 * Source: S. Joe and F. Y. Kuo (2008), SIAM J. Sci. Comput. 30, 2635-2654 (direction numbers, recalled and tested for their equal spread in every
 * pair of coordinates); I. A. Antonov and V. M. Saleev (1979) for the Gray code order; A. B. Owen (2003) for the shift.
 */
export function sobolPoints(coordinate: number, generator: Generator): (into: Float64Array, count: number) => void {
  const words = directionWords(coordinate);
  const shift = Math.floor(generator.next() * 2 ** 32);
  let [index, state] = [0, 0];
  return (into, count) => {
    for (let i = 0; i < count; i++) {
      into[i] = (((state ^ shift) >>> 0) + 0.5) / 2 ** 32;
      index++;
      state ^= words[31 - Math.clz32(index & -index)] as number;
    }
  };
}
