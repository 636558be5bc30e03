// Record tables on their way into a dated copy and out again: the joined columns, without what formulas compute.
import type { RowRef, TraceCell } from "../../core/base/index.ts";
import { type Column, type ColumnTable, cellsBehind } from "../../core/columns/index.ts";
import { cellsFromEmbedded, embeddedCells, severalFromEmbedded } from "./embedded-cells.ts";
import type { EmbeddedColumn, EmbeddedTable } from "./embedded-copy.ts";

const withNulls = (values: Float64Array): readonly (number | null)[] =>
  Array.from(values, (value) => (Number.isFinite(value) ? value : null));
const withGaps = (values: readonly (number | null)[]): Float64Array =>
  Float64Array.from(values, (value) => value ?? Number.NaN);

type Of<T extends { readonly kind: string }, K extends T["kind"]> = Extract<T, { kind: K }>;

const embedded: { readonly [K in Column["kind"]]: (column: Of<Column, K>) => Of<EmbeddedColumn, K> } = {
  quantity: ({ contributions, ...column }) => ({
    ...column,
    values: withNulls(column.values),
    uncertainty: column.uncertainty && withNulls(column.uncertainty),
    ...(contributions
      ? {
          contributions: [...contributions].map(([source, { values, shared }]) => ({
            source,
            values: withNulls(values),
            shared,
          })),
        }
      : {}),
  }),
  label: (column) => ({ ...column, codes: [...column.codes] }),
  grade: (column) => ({ ...column, codes: [...column.codes] }),
  date: (column) => ({ ...column, days: withNulls(column.days) }),
  pitch: (column) => ({ ...column, frequencies: withNulls(column.frequencies) }),
  words: (column) => column,
  "yes-no": (column) => ({ ...column, values: [...column.values] }),
};

const restored: { readonly [K in Column["kind"]]: (column: Of<EmbeddedColumn, K>) => Of<Column, K> } = {
  quantity: ({ contributions, ...column }) => ({
    ...column,
    values: withGaps(column.values),
    uncertainty: column.uncertainty && withGaps(column.uncertainty),
    ...(contributions
      ? {
          contributions: new Map(
            contributions.map(({ source, values, shared }) => [source, { values: withGaps(values), shared }]),
          ),
        }
      : {}),
  }),
  label: (column) => ({ ...column, codes: Int32Array.from(column.codes) }),
  grade: (column) => ({ ...column, codes: Int32Array.from(column.codes) }),
  date: (column) => ({ ...column, days: withGaps(column.days) }),
  pitch: (column) => ({ ...column, frequencies: withGaps(column.frequencies) }),
  words: (column) => column,
  "yes-no": (column) => ({ ...column, values: Int8Array.from(column.values) }),
};

/** Columns made by formula stay out of a copy: the notebook's text makes them again. Those that a description makes have no such text. */
const stays = ({ origin }: Column): boolean => origin.from === "file" || origin.readings === true;

/** All cells of the rows whose value in a column comes of several. */
function severalCells(table: ColumnTable, column: string): ReadonlyMap<number, readonly TraceCell[]> {
  const behind = table.rows.map((_, index) => [index, cellsBehind(table, column, index)] as const);
  return new Map(behind.filter(([, cells]) => cells.length > 1));
}

/** A table as the copy holds it. */
export function embeddedTable(table: ColumnTable): EmbeddedTable {
  const measured = [...table.columns.values()].filter(stays);
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
        severalCells(table, name),
      ),
    ),
  };
}

/** The table back from a copy. Every row still knows its raw cells. */
export function columnTableFromEmbedded(table: EmbeddedTable): ColumnTable {
  const cells = new Map<string, readonly (TraceCell | null)[]>(
    table.cells.map((each) => [each.column, cellsFromEmbedded(each)]),
  );
  const several = new Map(table.cells.map((each) => [each.column, severalFromEmbedded(each)]));
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
    cellsAt: (column, row) => several.get(column)?.get(row) ?? [cells.get(column)?.[row] ?? []].flat(),
    notes: table.notes,
  };
}
