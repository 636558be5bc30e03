import type { RowRef } from "../../src/core/base/index.ts";
import type {
  Column,
  ColumnTable,
  DateColumn,
  GradeColumn,
  LabelColumn,
  QuantityColumn,
  WordsColumn,
} from "../../src/core/columns/index.ts";
import type { Dimension } from "../../src/core/units/index.ts";
import { toSi, unitFromCode } from "../../src/core/units/index.ts";

const file = (name: string) =>
  ({
    name,
    header: name,
    origin: { from: "file", file: "records/tops.csv", table: "tops", col: 1 },
    warnings: 0,
  }) as const;

/** A measured column from values as written in `unit` (NaN = missing); uncertainty in the same unit. */
export function quantity(
  name: string,
  unit: string,
  values: readonly number[],
  uncertainty: number | null = null,
): QuantityColumn {
  const known = unitFromCode(unit);
  return {
    kind: "quantity",
    ...file(name),
    unit,
    dimension: known.dimension as Dimension,
    values: Float64Array.from(values, (value) => toSi(value, known)),
    uncertainty: uncertainty === null ? null : Float64Array.from(values, () => uncertainty * known.factor),
  };
}

/** A label column; null = missing. */
export function label(name: string, labels: readonly (string | null)[]): LabelColumn {
  const names = [...new Set(labels.filter((one) => one !== null))].sort();
  return {
    kind: "label",
    ...file(name),
    names,
    codes: Int32Array.from(labels, (one) => (one === null ? -1 : names.indexOf(one))),
  };
}

export const grade = (name: string, levels: readonly string[], grades: readonly string[]): GradeColumn => ({
  kind: "grade",
  ...file(name),
  levels,
  codes: Int32Array.from(grades, (one) => levels.indexOf(one)),
});
export const notes = (name: string, texts: readonly (string | null)[]): WordsColumn => ({
  kind: "words",
  ...file(name),
  texts,
});

/** A date column: days since 1970-01-01, NaN = missing. */
export const date = (name: string, days: readonly number[]): DateColumn => ({
  kind: "date",
  ...file(name),
  days: Float64Array.from(days),
  texts: days.map((day) => (Number.isNaN(day) ? null : String(day))),
});

/** A table of columns for a test; pieces are called T-1, T-2 … */
export function tableOf(columns: readonly Column[], more: Partial<ColumnTable> = {}): ColumnTable {
  const rowCount = Math.max(
    ...columns.map((column) =>
      column.kind === "label" || column.kind === "grade"
        ? column.codes.length
        : column.kind === "words"
          ? column.texts.length
          : column.kind === "quantity"
            ? column.values.length
            : 0,
    ),
  );
  const rows = Array.from(
    { length: rowCount },
    (_, at): RowRef => ({ table: "tops", row: at + 1, piece: `T-${at + 1}` }),
  );
  return {
    name: "tops",
    rowCount,
    rows,
    columns: new Map(columns.map((column) => [column.name, column])),
    leftOut: new Map(),
    cellAt: (column, row) => ({
      file: "records/tops.csv",
      table: "tops",
      row: row + 1,
      col: 1,
      column,
      raw: "raw",
      reading: "reading",
    }),
    notes: [],
    ...more,
  };
}
