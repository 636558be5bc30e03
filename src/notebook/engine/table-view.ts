// A record table or its computed columns as a grid: raw text beside reading, row by row.
import type { GridColumn, View } from "../../core/base/index.ts";
import type { Column, ColumnTable } from "../../core/columns/index.ts";
import type { TableResult } from "./entry-result.ts";
import type { GridCells } from "./grid-cells.ts";

type TableView = Extract<View, { readonly kind: "table" }>;

/** Rows of a grid that travel with an answer; the whole table stays where it is. */
const ROWS_SHOWN = 1000;

const unitOf = (column: Column): string =>
  column.kind === "quantity" ? column.unit : column.kind === "pitch" ? "Hz" : "1";

const gridColumn = (column: Column): GridColumn => ({
  name: column.name,
  header: column.header,
  kind: column.kind,
  unit: unitOf(column),
  warnings: column.warnings,
  ...(column.origin.from === "formula" ? { formula: column.origin.formula } : {}),
});

/** The grid of some columns of a table. */
export function tableView(
  table: ColumnTable,
  columns: readonly Column[],
  caption: string,
  gridCells: GridCells,
): TableView {
  const count = Math.min(ROWS_SHOWN, table.rowCount);
  const cells = columns.map((column) => gridCells(table, column, count));
  return {
    kind: "table",
    caption,
    columns: columns.map(gridColumn),
    rowCount: table.rowCount,
    notes: table.notes,
    rows: table.rows.slice(0, count).map((row, index) => {
      const why = table.leftOut.get(index);
      return {
        piece: row.piece,
        row: row.row,
        ...(why === undefined ? {} : { setAside: why }),
        cells: cells.map((ofColumn) => ofColumn[index] ?? { raw: "", reading: "" }),
      };
    }),
  };
}

/** The table in short, as `report` prints it. */
export const tableInShort = (table: ColumnTable, columns: readonly Column[]): TableResult => ({
  name: table.name,
  rowCount: table.rowCount,
  notes: table.notes,
  columns: columns.map((column) => ({
    name: column.name,
    kind: column.kind,
    unit: unitOf(column),
    warnings: column.warnings,
  })),
  leftOut: [...table.leftOut].map(([index, why]) => ({ piece: table.rows[index]?.piece ?? String(index + 1), why })),
});
