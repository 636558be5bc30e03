import type { Dimension } from "../units/index.ts";

/** A value of the notebook: SI value and standard uncertainty, the unit in which it is shown; null where there is none. */
export type Amount = {
  readonly value: number | null;
  readonly dimension: Dimension;
  readonly unit: string;
  readonly uncertainty: number | null;
  /** What each source of error adds, signed, SI: errors that two values share are not counted twice. */
  readonly contributions?: ReadonlyMap<string, number>;
};

/** What a formula reads of a value; an `Amount` is one. */
export type AmountRead = Omit<Amount, "dimension">;
/** Values and dials by name. */
export type Amounts = ReadonlyMap<string, AmountRead>;
