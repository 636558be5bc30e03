import { ascendingEigen } from "../../numerics/index.ts";
import { classEnergy } from "./class-energy.ts";
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
  const { values, vectors } = ascendingEigen(classEnergy(parity, weights), parity.degrees.length);
  return { parity, weights, squares: values, shapes: vectors };
}
