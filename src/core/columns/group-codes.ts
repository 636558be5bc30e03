import type { Column } from "./column.ts";
import { labelsFromTexts } from "./labels-from-texts.ts";

/** Which group each row is in: `codes` index `names`, -1 = missing. */
export type GroupCodes = { readonly codes: Int32Array; readonly names: readonly string[] };

/** The groups of a column: labels and grades by name, yes and no, dates, notes and pitches by their text, quantities by value in SI. */
export function groupCodes(column: Column): GroupCodes {
  switch (column.kind) {
    case "label":
      return { codes: column.codes, names: column.names };
    case "grade":
      return { codes: column.codes, names: column.levels };
    case "yes-no":
      return { codes: Int32Array.from(column.values), names: ["no", "yes"] };
    case "date":
    case "pitch":
    case "words":
      return labelsFromTexts(column.texts);
    case "quantity":
      return labelsFromTexts(Array.from(column.values, (value) => (Number.isNaN(value) ? null : String(value))));
  }
}
