// A value of the graph (SI) as a result shows it: in its unit, and in words.
import { amountInWords, fromSi, unitFromCode } from "../../core/units/index.ts";
import type { CellAmount } from "./cell.ts";
import type { AmountResult } from "./entry-result.ts";

/** The amount in its unit, never rounded, and its words, rounded by its uncertainty. */
export function amountResult({ value, unit, uncertainty }: CellAmount): {
  readonly value: AmountResult;
  readonly words: string;
} {
  const known = unitFromCode(unit);
  const shown = value === null ? null : fromSi(value, known);
  const spread = uncertainty === null ? null : uncertainty / known.factor;
  return {
    value: { value: shown, unit, uncertainty: spread },
    words: shown === null ? "missing" : amountInWords(shown, spread, unit),
  };
}
