import type { RowRef } from "./row-ref.ts";

/** One raw cell of one file, with what it was read as. `row` and `col` count from 1 as in the reading of the table. */
export type TraceCell = {
  readonly file: string;
  readonly table: string;
  readonly row: number;
  readonly col: number;
  readonly column: string;
  readonly raw: string;
  /** The reading in words, with its unit and uncertainty: "2.31 ± 0.02 mm". */
  readonly reading: string;
  /** What reading says of the cell, in words, where it is not certain. */
  readonly warning?: string;
  /** Where an edit made this cell: the raw text in the file, null where the whole record was added. */
  readonly before?: string | null;
};

/** One step on the way back from a number. */
export type TraceStep = {
  /** "estimate", "method", "column", "formula", "rows", "cells", "file". */
  readonly what: string;
  readonly says: string;
  readonly formula?: string;
  readonly column?: string;
  readonly rows?: readonly RowRef[];
  readonly cells?: readonly TraceCell[];
};

/** From a number shown, back through method, columns and rows to the raw cell in the raw file. Plain JSON. */
export type Trace = { readonly steps: readonly TraceStep[] };
