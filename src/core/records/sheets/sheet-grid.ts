// One sheet of a workbook as it is stored, nothing interpreted: its filled cells from the top down and from the left, each
// with its raw text and what the sheet says it is. Empty cells take no place, however far out the last one stands.
//
//   rows     [ 0,       0,            1,        1      ]     from 0
//   columns  [ 0,       1,            0,        1      ]     from 0
//   raws     [ "board", "thickness",  "VK-1",   "2.31" ]
//   stored   [ text,    text,         text,     number in mm ]
import type { StoredCell } from "../source/stored-cell.ts";

/** A merged stretch, from and to inclusive, from 0. */
export type Merge = {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
};
/** `hiddenRows`: those with cells in them. */
export type SheetGrid = {
  readonly name: string;
  readonly hidden: boolean;
  readonly rows: readonly number[];
  readonly columns: readonly number[];
  readonly raws: readonly string[];
  readonly stored: readonly StoredCell[];
  readonly merges: readonly Merge[];
  readonly hiddenRows: ReadonlySet<number>;
  readonly hiddenColumns: ReadonlySet<number>;
};
