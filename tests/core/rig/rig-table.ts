// A small table of rig checks for tests, from plain lists. Values in grams; null where a cell is blank.
import type { Column, ColumnTable, DateColumn, QuantityColumn } from "../../../src/core/columns/index.ts";

export type RigTable = {
  readonly table: ColumnTable;
  readonly reading: QuantityColumn;
  readonly reference: QuantityColumn;
  readonly date: DateColumn;
};

const grams = (name: string, col: number, values: readonly (number | null)[]): QuantityColumn => ({
  kind: "quantity",
  name,
  header: name,
  origin: { from: "file", file: "records/rig-checks.csv", table: "rig", col },
  warnings: 0,
  values: Float64Array.from(values, (value) => (value === null ? Number.NaN : value / 1000)),
  uncertainty: null,
  unit: "g",
  dimension: { mass: [1, 1] },
});

export function rigTable(
  readings: readonly (number | null)[],
  references: readonly (number | null)[],
  days: readonly (number | null)[] = [],
): RigTable {
  const [reading, reference] = [grams("reading", 1, readings), grams("reference", 2, references)];
  const date: DateColumn = {
    kind: "date",
    name: "date",
    header: "date",
    origin: { from: "file", file: "records/rig-checks.csv", table: "rig", col: 3 },
    warnings: 0,
    days: Float64Array.from(readings, (_, i) => days[i] ?? Number.NaN),
    texts: readings.map(() => null),
  };
  const raw = [readings, references];
  const table: ColumnTable = {
    name: "rig balance",
    rowCount: readings.length,
    columns: new Map<string, Column>([
      ["reading", reading],
      ["reference", reference],
      ["date", date],
    ]),
    rows: readings.map((_, i) => ({ table: "rig balance", row: i + 1, piece: `m-${i + 1}` })),
    leftOut: new Map(),
    notes: [],
    cellAt: (column, row) => {
      const col = column === "reading" ? 1 : column === "reference" ? 2 : 0;
      const value = raw[col - 1]?.[row];
      return col === 0 || value === null || value === undefined
        ? null
        : {
            file: "records/rig-checks.csv",
            table: "rig",
            row: row + 1,
            col,
            column,
            raw: String(value),
            reading: `${value} g`,
          };
    },
  };
  return { table, reading, reference, date };
}
