// How a file was read: its tables cell by cell, the records set aside, and the warnings. Plain JSON.
import type { ReadOptions } from "./read-options.ts";

export type CellKind = "quantity" | "text" | "date" | "pitch" | "grade" | "blank" | "unreadable";
export type ColumnKind = "quantity" | "text" | "date" | "pitch" | "grade" | "yes-no";

/** One cell: the raw text as it stood in the file, and what it was read as. `value` is null for blank and unreadable. */
export type Reading = {
  readonly raw: string;
  readonly kind: CellKind;
  readonly value: number | string | null;
  readonly unit: string | null;
  readonly uncertainty?: number;
  readonly code?: string;
};
export type RecordColumn = { readonly name: string; readonly unit: string | null; readonly kind: ColumnKind };
export type RecordTable = {
  readonly name: string;
  readonly columns: readonly RecordColumn[];
  readonly rows: readonly (readonly Reading[])[];
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
