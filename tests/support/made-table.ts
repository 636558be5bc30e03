// A small column table made up in a test: quantities in SI with a display unit, labels, dates.
import type { Column, ColumnTable } from "../../src/core/columns/index.ts";
import { unitFromCode } from "../../src/core/units/index.ts";

const origin = (name: string) => ({ from: "file", file: "made-up.csv", table: "made-up", col: name.length }) as const;

/** A quantity column: values in SI (NaN = missing) and the unit in which it is shown. */
export const madeQuantity = (
  name: string,
  unit: string,
  values: readonly number[],
  uncertainty: number | null = null,
): Column => ({
  kind: "quantity",
  name,
  header: name,
  origin: origin(name),
  warnings: 0,
  values: Float64Array.from(values),
  uncertainty: uncertainty === null ? null : new Float64Array(values.length).fill(uncertainty),
  unit,
  dimension: unitFromCode(unit).dimension,
});

/** A label column. */
export function madeLabel(name: string, texts: readonly string[]): Column {
  const names = [...new Set(texts)].sort();
  return {
    kind: "label",
    name,
    header: name,
    origin: origin(name),
    warnings: 0,
    codes: Int32Array.from(texts, (text) => names.indexOf(text)),
    names,
  };
}

/** A date column, days since 1970-01-01. */
export const madeDate = (name: string, days: readonly number[]): Column => ({
  kind: "date",
  name,
  header: name,
  origin: origin(name),
  warnings: 0,
  days: Float64Array.from(days),
  texts: days.map(String),
});

/** The table of such columns; pieces are called P1, P2 … */
export function madeTable(
  columns: readonly Column[],
  rowCount: number,
  roles: Pick<ColumnTable, "shared" | "finished"> = {},
): ColumnTable {
  return {
    name: "made-up",
    rowCount,
    columns: new Map(columns.map((column) => [column.name, column])),
    rows: Array.from({ length: rowCount }, (_, at) => ({ table: "made-up", row: at + 1, piece: `P${at + 1}` })),
    leftOut: new Map(),
    cellAt: () => null,
    notes: [],
    ...roles,
  };
}
