// Columns of yes and no, in several languages and signs; never 1 and 0, never x.
import { cellsWith } from "./cells-with.ts";
import type { ColumnReader } from "./column-source.ts";
import { rowsOf } from "./column-source.ts";
import { reading, unreadable } from "./field.ts";

const YES = new Set(["yes", "y", "true", "ja", "j", "sí", "si", "s", "oui", "✓", "☑"]);
const NO = new Set(["no", "n", "false", "nein", "non", "✗", "☐"]);

function yesNo(text: string): "yes" | "no" | null {
  const word = text.length > 5 ? "" : text.toLowerCase();
  return YES.has(word) ? "yes" : NO.has(word) ? "no" : null;
}

export const yesNoReader: ColumnReader = {
  kind: "yes-no",
  fits: (_, counted) => rowsOf(counted, (cell) => yesNo(cell.field.text) !== null),
  read: (source) => ({
    unit: source.unit,
    warnings: [],
    cells: cellsWith(source, ({ field }) => {
      const value = yesNo(field.text);
      return value === null ? unreadable(field, "unreadable-yes-no") : reading(field, "text", value);
    }),
  }),
};
