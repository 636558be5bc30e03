// Record tables on their way into a dated copy and out again: the joined columns, without what formulas compute.
import type { RowRef, TraceCell } from "../../core/base/index.ts";
import type { Column, ColumnTable } from "../../core/columns/index.ts";
import { cellsFromEmbedded, embeddedCells } from "./embedded-cells.ts";
import type { EmbeddedColumn, EmbeddedTable } from "./embedded-copy.ts";

const withNulls = (values: Float64Array): readonly (number | null)[] =>
  Array.from(values, (value) => (Number.isFinite(value) ? value : null));
const withGaps = (values: readonly (number | null)[]): Float64Array =>
  Float64Array.from(values, (value) => value ?? Number.NaN);

type Of<T extends { readonly kind: string }, K extends T["kind"]> = Extract<T, { kind: K }>;

const embedded: { readonly [K in Column["kind"]]: (column: Of<Column, K>) => Of<EmbeddedColumn, K> } = {
  quantity: (column) => ({
    ...column,
    values: withNulls(column.values),
    uncertainty: column.uncertainty && withNulls(column.uncertainty),
  }),
  label: (column) => ({ ...column, codes: [...column.codes] }),
  grade: (column) => ({ ...column, codes: [...column.codes] }),
  date: (column) => ({ ...column, days: withNulls(column.days) }),
  pitch: (column) => ({ ...column, frequencies: withNulls(column.frequencies) }),
  words: (column) => column,
  "yes-no": (column) => ({ ...column, values: [...column.values] }),
};

const restored: { readonly [K in Column["kind"]]: (column: Of<EmbeddedColumn, K>) => Of<Column, K> } = {
  quantity: (column) => ({
    ...column,
    values: withGaps(column.values),
    uncertainty: column.uncertainty && withGaps(column.uncertainty),
  }),
  label: (column) => ({ ...column, codes: Int32Array.from(column.codes) }),
  grade: (column) => ({ ...column, codes: Int32Array.from(column.codes) }),
  date: (column) => ({ ...column, days: withGaps(column.days) }),
  pitch: (column) => ({ ...column, frequencies: withGaps(column.frequencies) }),
  words: (column) => column,
  "yes-no": (column) => ({ ...column, values: Int8Array.from(column.values) }),
};

/** A table as the copy holds it. Columns made by formula stay out: the notebook's text makes them again. */
export function embeddedTable(table: ColumnTable): EmbeddedTable {
  const measured = [...table.columns.values()].filter((column) => column.origin.from === "file");
  return {
    name: table.name,
    rows: table.rows,
    leftOut: [...table.leftOut].map(([index, why]) => ({ index, why })),
    shared: table.shared ?? null,
    finished: table.finished ?? null,
    notes: table.notes,
    columns: measured.map((column) => (embedded[column.kind] as (column: Column) => EmbeddedColumn)(column)),
    cells: measured.map(({ name }) =>
      embeddedCells(
        name,
        table.rows.map((_, index) => table.cellAt(name, index)),
      ),
    ),
  };
}

/** The table back from a copy. Every row still knows its raw cells. */
export function columnTableFromEmbedded(table: EmbeddedTable): ColumnTable {
  const cells = new Map<string, readonly (TraceCell | null)[]>(
    table.cells.map((each) => [each.column, cellsFromEmbedded(each)]),
  );
  return {
    name: table.name,
    rowCount: table.rows.length,
    columns: new Map(
      table.columns.map((column) => [
        column.name,
        (restored[column.kind] as (column: EmbeddedColumn) => Column)(column),
      ]),
    ),
    rows: table.rows satisfies readonly RowRef[],
    leftOut: new Map(table.leftOut.map(({ index, why }) => [index, why])),
    ...(table.shared === null ? {} : { shared: table.shared }),
    ...(table.finished === null ? {} : { finished: table.finished }),
    cellAt: (column, row) => cells.get(column)?.[row] ?? null,
    notes: table.notes,
  };
}
