// Several rows of readings of one piece become one row. The piece is the evidence, not the reading.
import type { RowRef, TraceCell } from "../base/index.ts";
import { cellsBehind } from "./cells-behind.ts";
import { columnNotes, someNames } from "./column-notes.ts";
import { columnOfPieces } from "./column-of-pieces.ts";
import type { ColumnTable } from "./column-table.ts";
import { pieceMembers } from "./piece-members.ts";
import { textsOfColumn } from "./piece-names.ts";

/** What is to be said of the rows, before anything of the columns. */
function notesOnRows({ name, rowCount, leftOut }: ColumnTable, pieces: number, setAside: number): string[] {
  const equal = leftOut.size - setAside;
  return [
    columnNotes["one-row-per"]({ readings: rowCount, pieces, file: name }),
    ...(equal > 0 ? [columnNotes["equal-readings"]({ count: equal })] : []),
    ...(setAside > 0 ? [columnNotes["readings-set-aside"]({ count: setAside })] : []),
  ];
}

/**
 * The table with one row for each piece: quantities are means, notes stand together, other entries stay where all rows of the piece agree and are
 * missing where they do not, with a note that names the piece. by: the column that names the piece. Rows that equal an earlier one count: two
 * readings may well be alike. setAside: rows that the maker set aside, and why; they do not count.
 */
export function oneRowPer(
  table: ColumnTable,
  by: string,
  setAside: ReadonlyMap<number, string> = new Map(),
): ColumnTable {
  const naming = table.columns.get(by);
  if (!naming) return { ...table, notes: [...table.notes, columnNotes["piece-unknown"]({ column: by })] };
  const texts = textsOfColumn(naming, table.rowCount, (row) => table.cellAt(by, row)?.raw ?? "");
  const { members, leftOut } = pieceMembers(texts, setAside);
  const rows = members.map(([first = 0]): RowRef => {
    const ref = table.rows[first] as RowRef;
    return { ...ref, piece: texts[first] ?? `row ${ref.row}` };
  });
  const notes = [...table.notes, ...notesOnRows(table, members.length, setAside.size)];
  const made = new Map([...table.columns].map(([name, column]) => [name, columnOfPieces(column, members)] as const));
  for (const [column, { disagree }] of made) {
    const pieces = someNames(disagree.map((piece) => rows[piece]?.piece ?? ""));
    if (disagree.length > 0) notes.push(columnNotes["readings-disagree"]({ column, count: disagree.length, pieces }));
  }
  const columns = new Map([...made].map(([name, { column }]) => [name, column]));
  const cellsAt = (column: string, row: number): readonly TraceCell[] =>
    (members[row] ?? []).flatMap((own) => cellsBehind(table, column, own));
  const cellAt = (column: string, row: number): TraceCell | null => {
    const own = members[row] ?? [];
    const at = own.length === 1 ? own[0] : made.get(column)?.rows?.[row];
    return at === undefined ? null : table.cellAt(column, at);
  };
  return { ...table, rowCount: members.length, columns, rows, leftOut, cellAt, cellsAt, notes };
}
