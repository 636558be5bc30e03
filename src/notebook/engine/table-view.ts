// A record table or its computed columns as a grid: raw text beside reading, row by row.
import type { GridCell, GridColumn, View } from "../../core/base/index.ts";
import type { Column, ColumnTable } from "../../core/columns/index.ts";
import { amountInWords, fromSi, unitFromCode } from "../../core/units/index.ts";
import type { TableResult } from "./entry-result.ts";

/** Rows of a grid that travel with an answer; the whole table stays where it is. */
const ROWS_SHOWN = 1000;

const unitOf = (column: Column): string =>
  column.kind === "quantity" ? column.unit : column.kind === "pitch" ? "Hz" : "1";

/** The reading of a computed cell in words; "" where it is missing. */
export function readingAt(column: Column, row: number): string {
  switch (column.kind) {
    case "quantity": {
      const value = column.values[row] ?? Number.NaN;
      if (Number.isNaN(value)) return "";
      const unit = unitFromCode(column.unit);
      const spread = column.uncertainty?.[row];
      return amountInWords(
        fromSi(value, unit),
        spread === undefined || Number.isNaN(spread) || spread === 0 ? null : spread / unit.factor,
        column.unit,
      );
    }
    case "label":
      return column.names[column.codes[row] ?? -1] ?? "";
    case "grade":
      return column.levels[column.codes[row] ?? -1] ?? "";
    case "yes-no":
      return ["no", "yes"][column.values[row] ?? -1] ?? "";
    case "date":
    case "pitch":
    case "words":
      return column.texts[row] ?? "";
  }
}

const gridColumn = (column: Column): GridColumn => ({
  name: column.name,
  header: column.header,
  kind: column.kind,
  unit: unitOf(column),
  warnings: column.warnings,
  ...(column.origin.from === "formula" ? { formula: column.origin.formula } : {}),
});

function gridCell(table: ColumnTable, column: Column, row: number): GridCell {
  const cell = table.cellAt(column.name, row);
  return cell ? { raw: cell.raw, reading: cell.reading } : { raw: "", reading: readingAt(column, row) };
}

/** The grid of some columns of a table. */
export const tableView = (table: ColumnTable, columns: readonly Column[], caption: string): View => ({
  kind: "table",
  caption,
  columns: columns.map(gridColumn),
  rowCount: table.rowCount,
  notes: table.notes,
  rows: table.rows.slice(0, ROWS_SHOWN).map((row, index) => {
    const why = table.leftOut.get(index);
    return {
      piece: row.piece,
      row: row.row,
      ...(why === undefined ? {} : { setAside: why }),
      cells: columns.map((column) => gridCell(table, column, index)),
    };
  }),
});

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
