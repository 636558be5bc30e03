import type { Column } from "./column.ts";

/** How many rows a column has. */
export function columnLength(column: Column): number {
  switch (column.kind) {
    case "quantity":
    case "yes-no":
      return column.values.length;
    case "label":
    case "grade":
      return column.codes.length;
    case "date":
      return column.days.length;
    case "pitch":
      return column.frequencies.length;
    case "words":
      return column.texts.length;
  }
}
