// The columns of one record table of a notebook, after joins; every row still knows the cells it came from.
import type { RowRef, SetAside, TraceCell } from "../base/index.ts";
import type { Column } from "./column.ts";

export type ColumnTable = {
  readonly name: string;
  readonly rowCount: number;
  /** In the file's order, formula columns after them. */
  readonly columns: ReadonlyMap<string, Column>;
  readonly rows: readonly RowRef[];
  /** Index of each row that is left out by the maker or by a join -> reason (a sentence or code). Left-out rows keep their values. */
  readonly leftOut: ReadonlyMap<number, string>;
  /** Column that pieces share ("tree"), if said. */
  readonly shared?: string;
  /** Date column that says when an instrument was finished, if said. */
  readonly finished?: string;
  /** The raw cell that a measured column holds at a row; null for computed columns and for a mean of several readings. */
  readonly cellAt: (column: string, row: number) => TraceCell | null;
  /** All raw cells behind a measured column at a row, where a row may have several; `cellsBehind` asks it. */
  readonly cellsAt?: (column: string, row: number) => readonly TraceCell[];
  /** Remarks on joining and reading, in words. */
  readonly notes: readonly string[];
};

/** Rows that were left out, as a finding lists them. */
export const leftOutRows = (table: ColumnTable): readonly SetAside[] =>
  [...table.leftOut].map(([index, why]) => ({ row: table.rows[index] as RowRef, why }));
