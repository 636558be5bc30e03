/** Three numbers, one a modulus: E_L, E_R, G. */
export type Triple = readonly [number, number, number];

export const dot = (one: Triple, other: Triple): number => one[0] * other[0] + one[1] * other[1] + one[2] * other[2];
export const sumOf = (one: Triple, other: Triple): Triple => [one[0] + other[0], one[1] + other[1], one[2] + other[2]];
export const times = ([x, y, z]: Triple, by: number): Triple => [x * by, y * by, z * by];
/** The vector product: at right angles to both. */
export const crossProduct = (one: Triple, other: Triple): Triple => [
  one[1] * other[2] - one[2] * other[1],
  one[2] * other[0] - one[0] * other[2],
  one[0] * other[1] - one[1] * other[0],
];
