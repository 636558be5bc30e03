import type { RowRef, SetAside } from "../base/index.ts";
import type { Column, ColumnTable } from "../columns/index.ts";

/** The records that take part in an answer, and those that do not. */
export type Sample = {
  readonly rows: readonly RowRef[];
  /** Row numbers in the table, from 0, rising. */
  readonly index: Int32Array;
  readonly setAside: readonly SetAside[];
};

/** Whether a column has a finite value, a label, a text … at a row. */
export function isPresent(column: Column, row: number): boolean {
  switch (column.kind) {
    case "quantity":
      return Number.isFinite(column.values[row]);
    case "yes-no":
      return (column.values[row] ?? -1) >= 0;
    case "label":
    case "grade":
      return (column.codes[row] ?? -1) >= 0;
    case "date":
      return Number.isFinite(column.days[row]);
    case "pitch":
      return Number.isFinite(column.frequencies[row]);
    case "words":
      return (column.texts[row] ?? null) !== null;
  }
}

/**
 * The rows of a table that can answer: not left out, chosen by the mask, and with a value in each needed column. One pass.
 * mask: 1 where the question's condition holds, or null for all. positive: columns that must be above zero.
 */
export function sampleFromColumns(
  table: ColumnTable,
  needed: readonly Column[],
  mask: Uint8Array | null = null,
  positive: readonly Column[] = [],
): Sample {
  const index: number[] = [];
  const rows: RowRef[] = [];
  const setAside: SetAside[] = [];
  for (let row = 0; row < table.rowCount; row++) {
    const ref = table.rows[row];
    if (!ref) continue;
    const why =
      table.leftOut.get(row) ??
      (mask && mask[row] !== 1 ? "where" : undefined) ??
      (needed.every((column) => isPresent(column, row)) ? undefined : "missing-value") ??
      (positive.every((column) => column.kind !== "quantity" || (column.values[row] ?? 0) > 0)
        ? undefined
        : "not-positive");
    if (why === undefined) {
      index.push(row);
      rows.push(ref);
    } else setAside.push({ row: ref, why });
  }
  return { rows, index: Int32Array.from(index), setAside };
}

/** The values of an array at the sample's rows. */
export const sampled = (values: ArrayLike<number>, sample: Sample): Float64Array =>
  Float64Array.from(sample.index, (row) => values[row] ?? Number.NaN);
