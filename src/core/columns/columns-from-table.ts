// From cells that were read to typed columns.
import type { TraceCell } from "../base/index.ts";
import type { RecordTable, TableDescription } from "../records/index.ts";
import { readingInWords } from "../records/index.ts";
import type { Column } from "./column.ts";
import { columnFromCells } from "./column-from-cells.ts";
import { columnName, freeName } from "./column-name.ts";
import { columnNotes } from "./column-notes.ts";
import type { ColumnTable } from "./column-table.ts";
import { firstNamingColumn, pieceNames } from "./piece-names.ts";

/** Why a row that repeats an earlier one cell by cell takes no part. */
export const REPEATED_ROW = "repeated row";

/** Rows equal to an earlier row in every raw cell. */
function repeatedRows(table: RecordTable): ReadonlyMap<number, string> {
  const seen = new Set<string>();
  const repeated = new Map<number, string>();
  for (const [row, cells] of table.rows.entries()) {
    const text = JSON.stringify(cells.map((cell) => cell.raw));
    if (seen.has(text)) repeated.set(row, REPEATED_ROW);
    seen.add(text);
  }
  return repeated;
}

/**
 * The typed columns of a table. table: as it was read; file: its path, for traces; name: what the notebook calls the table; said: what the maker
 * says of its columns, by header. Cells that are blank, unreadable or in a unit of another dimension are missing; a row that repeats an earlier
 * one is kept and left out. Records are called by the first label column without repeats, until `withRoles` says otherwise.
 */
export function columnsFromTable(
  table: RecordTable,
  file: string,
  name: string,
  said: TableDescription = {},
): ColumnTable {
  const saidOf = new Map(Object.entries(said.columns ?? {}));
  const columns = new Map<string, Column>();
  const notes: string[] = [];
  const colOf = new Map<string, number>();
  for (const [index, read] of table.columns.entries()) {
    const about = saidOf.get(read.name) ?? {};
    const wanted = columnName(about.name ?? read.name);
    const own = freeName(wanted, columns);
    if (own !== wanted) notes.push(columnNotes["name-repeats"]({ header: read.name, name: own }));
    const cells = table.rows.map((row) => row[index] ?? { raw: "", kind: "blank" as const, value: null, unit: null });
    const { column, otherDimension, otherScale } = columnFromCells(
      own,
      { from: "file", file, table: table.name, col: index + 1 },
      read,
      cells,
      about,
    );
    if (otherDimension > 0) notes.push(columnNotes["other-dimension"]({ column: own, count: otherDimension }));
    if (otherScale > 0) notes.push(columnNotes["other-scale"]({ column: own, count: otherScale }));
    columns.set(own, column);
    colOf.set(own, index);
  }
  const cellAt = (column: string, row: number): TraceCell | null => {
    const col = colOf.get(column);
    const cell = col === undefined ? undefined : table.rows[row]?.[col];
    return col === undefined || !cell
      ? null
      : { file, table: table.name, row: row + 1, col: col + 1, column, raw: cell.raw, reading: readingInWords(cell) };
  };
  const rowCount = table.rows.length;
  const named = { columns, rowCount, rawAt: (column: string, row: number) => cellAt(column, row)?.raw ?? "" };
  const rows = pieceNames(named, firstNamingColumn(named)).map((piece, row) => ({ table: name, row: row + 1, piece }));
  return { name, rowCount, columns, rows, leftOut: repeatedRows(table), cellAt, notes };
}
