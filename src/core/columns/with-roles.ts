import { columnNotes } from "./column-notes.ts";
import type { ColumnTable } from "./column-table.ts";
import { pieceNames } from "./piece-names.ts";

/** What the maker says of a table: column names, and pieces to leave out with the reason. */
export type Roles = {
  readonly piece?: string;
  readonly shared?: string;
  readonly finished?: string;
  readonly leaveOut?: readonly { readonly piece: string; readonly because: string }[];
};

/** Whether a piece stands on several rows that take part. */
function repeats(pieces: readonly string[], leftOut: { readonly has: (row: number) => boolean }): boolean {
  const kept = pieces.filter((_, row) => !leftOut.has(row));
  return new Set(kept).size < kept.length;
}

/**
 * The table with its roles. `piece` renames its records; a name that no column has changes nothing. Each piece to leave out keeps its values and
 * takes no part, with the maker's reason; a row left out for another reason keeps the first. Rows of one piece share it: where the maker says nothing
 * else, a piece on several rows is no separate evidence on each.
 */
export function withRoles(table: ColumnTable, roles: Roles): ColumnTable {
  const rawAt = (column: string, row: number) => table.cellAt(column, row)?.raw ?? "";
  const pieces =
    roles.piece !== undefined && table.columns.has(roles.piece) ? pieceNames({ ...table, rawAt }, roles.piece) : null;
  const rows = pieces ? table.rows.map((row, index) => ({ ...row, piece: pieces[index] ?? row.piece })) : table.rows;
  const leftOut = new Map(table.leftOut);
  const reasons = new Map((roles.leaveOut ?? []).map(({ piece, because }) => [piece.trim().normalize("NFC"), because]));
  for (const [index, { piece }] of rows.entries()) {
    const because = reasons.get(piece.trim().normalize("NFC"));
    if (because !== undefined && !leftOut.has(index)) leftOut.set(index, because);
  }
  const said = roles.shared ?? table.shared;
  const repeated = said === undefined && pieces !== null && repeats(pieces, leftOut) ? roles.piece : undefined;
  const shared = said ?? repeated;
  const finished = roles.finished ?? table.finished;
  return {
    ...table,
    rows,
    leftOut,
    ...(repeated === undefined ? {} : { notes: [...table.notes, columnNotes["rows-share"]({ on: repeated })] }),
    ...(shared === undefined ? {} : { shared }),
    ...(finished === undefined ? {} : { finished }),
  };
}
