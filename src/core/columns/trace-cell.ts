import type { TraceCell } from "../base/index.ts";
import type { Cells, RecordTable, TableEdits } from "../records/index.ts";
import { readingAt, readingInWords, readingWarnings } from "../records/index.ts";

/** A column of a file, as traces name it. `col`: its place in the table, from 1. */
export type TracedColumn = {
  readonly file: string;
  readonly table: RecordTable;
  readonly column: string;
  readonly col: number;
  readonly cells: Cells;
};

/** The raw cell at a row (from 0), how it was read, and what the file holds where an edit changed it; null outside the table. */
export function traceCell(
  { file, table, column, col, cells }: TracedColumn,
  row: number,
  edits: TableEdits,
): TraceCell | null {
  if (row < 0 || row >= table.rowCount) return null;
  const cell = readingAt(cells, row);
  const before = edits.added.has(row) ? null : edits.before.get(row)?.get(col - 1);
  return {
    file,
    table: table.name,
    row: row + 1,
    col,
    column,
    raw: cell.raw,
    reading: readingInWords(cell),
    ...(cell.code === undefined ? {} : { warning: readingWarnings.get(cell.code) ?? cell.code }),
    ...(before === undefined ? {} : { before }),
  };
}
