/**
 * One edit of a record table, as the maker asks for it. `table`, `row`, `col` count from 1, rows without the header. `before`: the raw text
 * that the maker saw; where the cell holds something else by now, nothing is done.
 */
export type RecordEdit =
  | {
      readonly what: "cell";
      readonly table: number;
      readonly row: number;
      readonly col: number;
      readonly before: string;
      readonly after: string;
    }
  | { readonly what: "set-aside"; readonly table: number; readonly row: number; readonly reason: string }
  | { readonly what: "bring-back"; readonly table: number; readonly row: number }
  /** `cells`: raw texts in the order of the table's columns; missing ones at the end are blank. */
  | { readonly what: "add"; readonly table: number; readonly cells: readonly string[] }
  | { readonly what: "undo" }
  | { readonly what: "redo" };
