import type { Column, QuantityColumn } from "./column.ts";

// Loops, not Array.from with a function: a join of 100,000 rows picks every column.
function picked(values: Float64Array, rows: Int32Array): Float64Array {
  const out = new Float64Array(rows.length);
  for (let at = 0; at < rows.length; at++) out[at] = values[rows[at] as number] ?? Number.NaN;
  return out;
}
function pickedTexts(texts: readonly (string | null)[], rows: Int32Array): readonly (string | null)[] {
  const out = new Array<string | null>(rows.length);
  for (let at = 0; at < rows.length; at++) out[at] = texts[rows[at] as number] ?? null;
  return out;
}
function pickedCodes(codes: Int32Array, rows: Int32Array): Int32Array {
  const out = new Int32Array(rows.length);
  for (let at = 0; at < rows.length; at++) out[at] = codes[rows[at] as number] ?? -1;
  return out;
}

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
