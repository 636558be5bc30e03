// What the maker says of a table in the file beside it (NAME.about.json).
import type { ReadOptions } from "./read-options.ts";
import type { ColumnKind } from "./reading.ts";

/** What values usually are, in `unit` or else in the column's own. */
export type UsualRange = { readonly low: number; readonly high: number; readonly unit?: string };
/** `uncertainty`: standard uncertainty of each value, "0.02 mm" or an amount. `name`: what the column is called by. */
export type DescribedColumn = {
  readonly kind?: ColumnKind;
  readonly unit?: string;
  readonly uncertainty?: string | { readonly value: number; readonly unit?: string };
  readonly meaning?: string;
  readonly usual?: UsualRange;
  readonly name?: string;
};
/** Columns that hold readings of one thing, by header: their mean becomes the column `name`. */
export type RepeatedReadings = { readonly name: string; readonly columns: readonly string[] };
/** Columns by header as read (without the unit); `missingValues` as in Table Schema; `oneRowPer`: the column that names a piece of several rows. */
export type TableDescription = {
  readonly title?: string;
  readonly description?: string;
  readonly columns?: Readonly<Record<string, DescribedColumn>>;
  readonly missingValues?: readonly string[];
  readonly repeats?: readonly RepeatedReadings[];
  readonly oneRowPer?: string;
  readonly read?: ReadOptions;
};
/** The part of a description that reading itself minds: kinds and units of columns, and what is a blank. */
export type SaidOfTable = Pick<TableDescription, "columns" | "missingValues">;
