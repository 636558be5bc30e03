import { type RecordTable, rawAt, type TableEdits } from "../records/index.ts";

/** Why a row that repeats an earlier one cell by cell takes no part. */
const REPEATED_ROW = "repeated row";

/** Rows equal in every raw cell to an earlier one that is not set aside. */
function repeatedRows(table: RecordTable, { setAside }: TableEdits): readonly number[] {
  const { repeatedRows: repeated, columns, rowCount } = table;
  if (setAside.size === 0 || repeated.length === 0) return repeated;
  const seen = new Set<string>();
  const [again, rows] = [new Set(repeated), Array.from({ length: rowCount }, (_, row) => row)];
  return rows.filter((row) => {
    if (setAside.has(row)) return false;
    const text = columns.map(({ cells }) => rawAt(cells, row)).join("\u0000");
    if (again.has(row) && seen.has(text)) return true;
    seen.add(text);
    return false;
  });
}

/** Rows (from 0) of a file's table that take no part, and why: set aside by the maker, or repeated. */
export const rowsLeftOut = (table: RecordTable, edits: TableEdits): ReadonlyMap<number, string> =>
  new Map([...repeatedRows(table, edits).map((row) => [row, REPEATED_ROW] as const), ...edits.setAside]);
