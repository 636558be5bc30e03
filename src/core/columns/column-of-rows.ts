import type { Column, QuantityColumn } from "./column.ts";

const picked = (values: Float64Array, rows: Int32Array): Float64Array =>
  Float64Array.from(rows, (row) => (row < 0 ? Number.NaN : (values[row] ?? Number.NaN)));
const pickedTexts = (texts: readonly (string | null)[], rows: Int32Array): readonly (string | null)[] =>
  Array.from(rows, (row) => (row < 0 ? null : (texts[row] ?? null)));
const pickedCodes = (codes: Int32Array, rows: Int32Array): Int32Array =>
  rows.map((row) => (row < 0 ? -1 : (codes[row] ?? -1)));

const pickedQuantity = (column: QuantityColumn, rows: Int32Array): QuantityColumn => ({
  ...column,
  values: picked(column.values, rows),
  uncertainty: column.uncertainty ? picked(column.uncertainty, rows) : null,
  ...(column.contributions
    ? {
        contributions: new Map(
          [...column.contributions].map(([source, { values, shared }]) => [
            source,
            { values: picked(values, rows), shared },
          ]),
        ),
      }
    : {}),
});

/** The column at these rows, in this order; row -1 is missing. Names and levels stay as they are. */
export function columnOfRows(column: Column, rows: Int32Array): Column {
  switch (column.kind) {
    case "quantity":
      return pickedQuantity(column, rows);
    case "yes-no":
      return { ...column, values: Int8Array.from(rows, (row) => (row < 0 ? -1 : (column.values[row] ?? -1))) };
    case "label":
      return { ...column, codes: pickedCodes(column.codes, rows) };
    case "grade":
      return { ...column, codes: pickedCodes(column.codes, rows) };
    case "date":
      return { ...column, days: picked(column.days, rows), texts: pickedTexts(column.texts, rows) };
    case "pitch":
      return { ...column, frequencies: picked(column.frequencies, rows), texts: pickedTexts(column.texts, rows) };
    case "words":
      return { ...column, texts: pickedTexts(column.texts, rows) };
  }
}
