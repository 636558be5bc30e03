// A computed cell in words: what stands in the grid where there is no raw text.
import type { Column } from "../../core/columns/index.ts";
import { amountInWords, fromSi, unitFromCode } from "../../core/units/index.ts";

/** The reading of a computed cell in words; "" where it is missing. */
export function readingAt(column: Column, row: number): string {
  switch (column.kind) {
    case "quantity": {
      const value = column.values[row] ?? Number.NaN;
      if (Number.isNaN(value)) return "";
      const unit = unitFromCode(column.unit);
      const spread = column.uncertainty?.[row];
      return amountInWords(
        fromSi(value, unit),
        spread === undefined || Number.isNaN(spread) || spread === 0 ? null : spread / unit.factor,
        column.unit,
      );
    }
    case "label":
      return column.names[column.codes[row] ?? -1] ?? "";
    case "grade":
      return column.levels[column.codes[row] ?? -1] ?? "";
    case "yes-no":
      return ["no", "yes"][column.values[row] ?? -1] ?? "";
    case "date":
    case "pitch":
    case "words":
      return column.texts[row] ?? "";
  }
}
