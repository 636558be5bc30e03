// How a file was read: its tables column by column, the records set aside, and the warnings.
import type { Cells } from "./cells.ts";
import type { ReadOptions } from "./read-options.ts";
import type { ColumnKind } from "./reading.ts";

/** `place`: the column's place among the fields of a record, from 0. */
export type RecordColumn = {
  readonly name: string;
  readonly unit: string | null;
  readonly kind: ColumnKind;
  readonly place: number;
  readonly cells: Cells;
};
/** `records`: the record of the file (from 1) that each row was; `sheet`: its sheet of a workbook; `repeatedRows`: rows (from 0) that are equal to an earlier one. */
export type RecordTable = {
  readonly name: string;
  readonly sheet?: string;
  readonly columns: readonly RecordColumn[];
  readonly rowCount: number;
  readonly records: Int32Array;
  readonly repeatedRows: readonly number[];
};
/** A record of the file (from 1) that is no row, and why. */
export type RecordSetAside = { readonly sheet?: string; readonly record?: number; readonly code: string };
/** `table`, `row` and `col` count from 1; what is left out is not meant: a column alone, a row alone, the whole file. */
export type ReadWarning = {
  readonly table?: number;
  readonly row?: number;
  readonly col?: number;
  readonly code: string;
};

export type ReadResult = {
  readonly file: string;
  readonly options?: ReadOptions;
  readonly tables: readonly RecordTable[];
  readonly setAside: readonly RecordSetAside[];
  readonly warnings: readonly ReadWarning[];
};
