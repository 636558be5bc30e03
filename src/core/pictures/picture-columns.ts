// What a picture is made from, beside the finding: the columns the question named.
import type { Column, ColumnTable, LabelColumn } from "../columns/index.ts";

/** The columns behind an answer. `x` of a rig check is the reference, `y` the reading; of an agreement `y` is A and `x` is B. */
export type PictureColumns = {
  readonly table: ColumnTable;
  readonly y: Column;
  readonly x?: Column | null;
  /** The label that chooses a point's mark, and the lines: `allowing for G`, `within G`, `across G`. */
  readonly group?: LabelColumn | null;
  /** The relation was fitted on logarithms. */
  readonly powerLaw?: boolean;
  /** Date of a rule, in days since 1970-01-01, with the dates on which instruments were finished. */
  readonly stated?: { readonly days: number; readonly finished: Float64Array } | null;
};
