import type { ParityClass } from "./parity-class.ts";

/** The energy of a parity class for given weights of its parts: a symmetric matrix, row by row. */
export function classEnergy({ degrees, energies }: ParityClass, weights: readonly number[]): Float64Array {
  const whole = new Float64Array(degrees.length ** 2);
  energies.forEach((energy, term) => {
    const weight = weights[term] as number;
    for (let at = 0; at < whole.length; at++) whole[at] = (whole[at] as number) + weight * (energy[at] as number);
  });
  return whole;
}
