import type { Column } from "../../columns/index.ts";

/** A column as numbers for a covariate: quantities and pitches in SI, days of a date, 1 and 0 of a yes/no; null for labels, grades and words. */
export function numericValues(column: Column): Float64Array | null {
  switch (column.kind) {
    case "quantity":
      return column.values;
    case "pitch":
      return column.frequencies;
    case "date":
      return column.days;
    case "yes-no":
      return Float64Array.from(column.values, (value) => (value < 0 ? Number.NaN : value));
    case "label":
    case "grade":
    case "words":
      return null;
  }
}
