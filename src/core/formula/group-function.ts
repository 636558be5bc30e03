// A function over the records of a group, as a catalogue record: `mean of X by G`.
import type { Source } from "../base/index.ts";

export type GroupFunction = {
  readonly id: string;
  readonly name: string;
  /** `same`: the result is of the kind of what it is taken of; `number`: a plain number. */
  readonly gives: "same" | "number";
  /** True where one missing record makes the result missing: a total without it would be too small. */
  readonly needsAll?: true;
  /** values: SI, none missing, may be empty. NaN for none. */
  readonly evaluate: (values: Float64Array) => number;
  /** Derivative of the result by each of the values. */
  readonly weights: (values: Float64Array, result: number) => Float64Array;
  /** Standard uncertainty that lies in how the records scatter, beside what they bring: SI, 0 for none. */
  readonly scatter?: (values: Float64Array) => number;
  readonly source: Source;
  readonly example: string;
};
