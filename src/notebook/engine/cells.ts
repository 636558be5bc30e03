// The names of all cells, each with the type of what it holds: the one place where an id is put together.
import type { Finding, Picture } from "../../core/base/index.ts";
import type { Column, ColumnTable } from "../../core/columns/index.ts";
import type { ReadResult, TableDescription, TableEdits } from "../../core/records/index.ts";
import type { RigInput } from "../../core/rig/index.ts";
import type { Cell, CellAmount, Slice } from "./cell.ts";

/** A file as it was read; `result` is null when there is no such file. */
export type FileReading = {
  readonly result: ReadResult | null;
  readonly description: TableDescription | null;
  /** What the log of edits beside it did, by table; `unplaced`: how much of it could not be done. */
  readonly edits: readonly TableEdits[];
  readonly unplaced: number;
  /** The description beside it, where it is not understood. */
  readonly faulty: { readonly file: string; readonly place: string; readonly reason: string } | null;
};
/** A dial: where it stands and how far it turns, in SI, and the unit in which it is shown. */
export type DialState = CellAmount & {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly step: number;
};
/** A rig check with what it rests on, so that a correction can be drawn from it. */
export type RigState = { readonly finding: Finding; readonly input: RigInput };
/** An answer with the table and columns behind it, so that its trace can be followed. */
export type Answered = { readonly finding: Finding; readonly table: ColumnTable; readonly columns: readonly Column[] };

/** The cells of a notebook by what they hold. */
export const cells = {
  bytes: (path: string): Cell<Uint8Array | null> => ({ id: `bytes:${path}` }),
  reading: (path: string): Cell<FileReading> => ({ id: `reading:${path}` }),
  table: (name: string): Cell<ColumnTable> => ({ id: `table:${name}` }),
  /** Names of the measured columns of a table: what decides which table a question means. */
  heads: (table: string): Cell<readonly string[]> => ({ id: `heads:${table}` }),
  column: (table: string, name: string): Cell<Column> => ({ id: `column:${table}/${name}` }),
  amount: (name: string): Cell<CellAmount> => ({ id: `amount:${name}` }),
  dial: (name: string): Cell<DialState> => ({ id: `dial:${name}` }),
  home: (entry: string): Cell<string> => ({ id: `home:${entry}` }),
  slice: (entry: string): Cell<Slice> => ({ id: `slice:${entry}` }),
  asked: (): Cell<ReadonlyMap<string, number>> => ({ id: "asked" }),
  askedOf: (entry: string): Cell<number> => ({ id: `asked-of:${entry}` }),
  answer: (entry: string): Cell<Answered> => ({ id: `answer:${entry}` }),
  rig: (entry: string): Cell<RigState> => ({ id: `rig:${entry}` }),
  picture: (entry: string): Cell<Picture> => ({ id: `picture:${entry}` }),
  lexicon: (): Cell<ReadonlyMap<string, readonly string[]>> => ({ id: "lexicon" }),
  setting: (entry: string): Cell<ReadonlyMap<string, CellAmount>> => ({ id: `setting:${entry}` }),
} as const;
