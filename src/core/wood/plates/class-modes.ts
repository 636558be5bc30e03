import { ascendingEigen } from "../../numerics/index.ts";
import type { ParityClass } from "./parity-class.ts";

/** Modes of a plate within a parity class. */
export type SolvedClass = {
  readonly parity: ParityClass;
  /** What multiplies each energy of the class. */
  readonly weights: readonly number[];
  /** Squared angular frequencies, ascending, rigid motions with their round-off among them. */
  readonly squares: Float64Array;
  /** Shares of each product of the class in each mode. */
  readonly shapes: readonly Float64Array[];
};

/** The modes of a parity class for given weights of its energies. */
export function classModes(parity: ParityClass, weights: readonly number[]): SolvedClass {
  const count = parity.degrees.length;
  const whole = new Float64Array(count ** 2);
  parity.energies.forEach((energy, term) => {
    const weight = weights[term] as number;
    for (let at = 0; at < whole.length; at++) whole[at] = (whole[at] as number) + weight * (energy[at] as number);
  });
  const { values, vectors } = ascendingEigen(whole, count);
  return { parity, weights, squares: values, shapes: vectors };
}
