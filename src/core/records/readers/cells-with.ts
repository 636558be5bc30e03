import type { Reading } from "../reading.ts";
import type { ColumnCell, ColumnSource } from "./column-source.ts";
import { asText, reading, unreadable } from "./field.ts";

/** What can be read in no column. */
const ALWAYS = new Set<ColumnCell["special"]>(["sheet-error", "ditto", "formula-without-value"]);

/** The readings of a column: what is the same in every kind (blanks, dittos, errors, formulas) is settled here, the rest by `read`. */
export function cellsWith(
  source: ColumnSource,
  read: (cell: ColumnCell) => Reading,
  formulaAsText = true,
  isValue: (text: string) => boolean = () => false,
): Reading[] {
  return source.cells.map((cell) => {
    const { field, special, formula } = cell;
    if (special !== null && ALWAYS.has(special)) return unreadable(field, special);
    if (special === "said-missing" || (special !== null && !isValue(field.text))) return reading(field, "blank", null);
    if (formula && !isValue(field.text))
      return formulaAsText ? asText(field, "formula-like") : unreadable(field, "formula-like");
    return read(cell);
  });
}
