// A function that a formula may call, as a catalogue record.
import type { Source } from "../base/index.ts";
import type { Dimension } from "../units/index.ts";

/** `any`: a quantity of any dimension; `same`: of the first argument's; `text`: a text in quotes. */
export type ArgumentSpec = {
  readonly name: string;
  readonly takes: Dimension | "any" | "same" | "text";
  readonly meaning: string;
  readonly optional?: true;
};

export type FormulaFunction = {
  /** As written in a formula. */
  readonly id: string;
  readonly name: string;
  readonly arguments: readonly ArgumentSpec[];
  /** The last argument may be repeated. */
  readonly repeats?: true;
  readonly dimension: (given: readonly Dimension[]) => Dimension;
  /** Canonical code in which the result is shown; `first`: as the first argument; null: the coherent SI unit. */
  readonly unit: string | "first" | null;
  /** SI in, SI out; anything that is not finite means missing. */
  readonly evaluate: (...values: number[]) => number;
  /** The partial derivative by each argument, where it is known; else it is found numerically. */
  readonly partials?: (...values: number[]) => readonly number[];
  /** Missing arguments are passed over, and `evaluate` is given NaN for them; else one that is missing makes the result missing. */
  readonly skipsMissing?: true;
  /** Standard uncertainty that lies in how its arguments scatter, beside what they bring: SI, 0 for none. */
  readonly scatter?: (...values: number[]) => number;
  /** Of a function of one text: its value in SI, null if the text is not understood. */
  readonly fromText?: (text: string) => number | null;
  readonly source: Source;
  readonly example: string;
};

/** How it is called: "round(x, [to])". */
export const signature = ({ id, arguments: list, repeats }: FormulaFunction): string =>
  `${id}(${list.map(({ name, optional }) => (optional ? `[${name}]` : name)).join(", ")}${repeats ? ", …" : ""})`;

/** How many arguments it takes, in words. */
export function argumentsInWords({ arguments: list, repeats }: FormulaFunction): string {
  const least = list.filter(({ optional }) => !optional).length;
  if (repeats) return `${least} or more arguments`;
  if (least !== list.length) return `${least} to ${list.length} arguments`;
  return least === 1 ? "one argument" : `${least} arguments`;
}
