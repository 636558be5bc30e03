/** One record of a table: how a finding names it. Plain JSON. */
export type RowRef = {
  /** The record table's name in the notebook. */
  readonly table: string;
  /** Row of the table, from 1, header not counted, in the file's order. */
  readonly row: number;
  /** The piece's own name, from the column that `piece is` names; else of the first column without repeats. */
  readonly piece: string;
};

/** A row that takes no part in an answer, and why (a code of `setAsideReasons`). */
export type SetAside = { readonly row: RowRef; readonly why: string };
