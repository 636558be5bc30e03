// From cells that were read to typed columns.
import type { TraceCell } from "../base/index.ts";
import type { Cells, RecordTable, TableDescription, TableEdits } from "../records/index.ts";
import { NO_EDITS, rawAt } from "../records/index.ts";
import type { Column } from "./column.ts";
import { columnFromCells } from "./column-from-cells.ts";
import { columnName, freeName } from "./column-name.ts";
import { columnNotes } from "./column-notes.ts";
import type { ColumnTable } from "./column-table.ts";
import { oneRowPer } from "./one-row-per.ts";
import { firstNamingColumn, pieceNames } from "./piece-names.ts";
import { rowsLeftOut } from "./rows-left-out.ts";
import { traceCell } from "./trace-cell.ts";
import { unusualValues } from "./unusual-values.ts";
import { withRepeats } from "./with-repeats.ts";

/**
 * The typed columns of a table. table: as it was read; file: its path, for traces; name: what the notebook calls the table; said: what the maker
 * says of its columns, by header. Cells that are blank, unreadable or in a unit of another dimension are missing; a row that repeats an earlier
 * one is kept and left out. Records are called by the first label column without repeats, until `withRoles` says otherwise. Repeated readings become
 * their mean where the description says so: first rows of one piece, then columns of one thing. edits: rows set aside, and what edited cells were.
 */
export function columnsFromTable(
  table: RecordTable,
  file: string,
  name: string,
  said: TableDescription = {},
  edits: TableEdits = NO_EDITS,
): ColumnTable {
  const saidOf = new Map(Object.entries(said.columns ?? {}));
  const columns = new Map<string, Column>();
  const notes: string[] = [];
  const cellsOf = new Map<string, { readonly col: number; readonly cells: Cells }>();
  const nameOf = new Map<string, string>();
  for (const [index, read] of table.columns.entries()) {
    const about = saidOf.get(read.name) ?? {};
    const wanted = columnName(about.name ?? read.name);
    const own = freeName(wanted, columns);
    if (own !== wanted) notes.push(columnNotes["name-repeats"]({ header: read.name, name: own }));
    const { column, otherDimension, otherScale } = columnFromCells(
      own,
      { from: "file", file, table: table.name, col: index + 1 },
      read,
      about,
    );
    if (otherDimension > 0) notes.push(columnNotes["other-dimension"]({ column: own, count: otherDimension }));
    if (otherScale > 0) notes.push(columnNotes["other-scale"]({ column: own, count: otherScale }));
    columns.set(own, column);
    nameOf.set(read.name, own);
    cellsOf.set(own, { col: index + 1, cells: read.cells });
  }
  const cellAt = (column: string, row: number): TraceCell | null => {
    const found = cellsOf.get(column);
    return found ? traceCell({ file, table, column, ...found }, row, edits) : null;
  };
  const { rowCount } = table;
  const raw = (column: string, row: number): string => {
    const found = cellsOf.get(column);
    return found ? rawAt(found.cells, row) : "";
  };
  const named = { columns, rowCount, rawAt: raw };
  const pieces = pieceNames(named, firstNamingColumn(named));
  for (const column of columns.values()) {
    const remark = unusualValues(column, saidOf.get(column.header)?.usual, pieces);
    if (remark !== null) notes.push(remark);
  }
  const rows = pieces.map((piece, row) => ({ table: name, row: row + 1, piece }));
  const plain = { name, rowCount, columns, rows, leftOut: rowsLeftOut(table, edits), cellAt, notes };
  const known = (header: string): string => nameOf.get(header) ?? columnName(header);
  const perPiece = said.oneRowPer === undefined ? plain : oneRowPer(plain, known(said.oneRowPer), edits.setAside);
  const repeats = (said.repeats ?? []).map((each) => ({
    name: columnName(each.name),
    columns: each.columns.map(known),
  }));
  return withRepeats(perPiece, repeats);
}
