// All that a reader may look at: the column's name and unit, its cells, and what the maker answered.
import type { ReadOptions } from "../read-options.ts";
import type { ColumnKind, Reading } from "../reading.ts";
import type { Field } from "./field.ts";
import type { DraftOrCode } from "./quantity-draft.ts";
import type { specialWords } from "./special-words.ts";

export type ColumnCell = {
  readonly field: Field;
  readonly special: ReturnType<typeof specialWords>;
  readonly formula: boolean;
  readonly draft: DraftOrCode | null;
};
export type ColumnSource = {
  readonly name: string;
  /** Words of the name, in lower case. */
  readonly words: ReadonlySet<string>;
  /** Unit of the header, else of the units row. */
  readonly unit: string | null;
  readonly cells: readonly ColumnCell[];
  readonly options: ReadOptions;
};
/** A column as read: its unit, its cells and the codes about the whole column. */
export type ColumnReading = {
  readonly unit: string | null;
  readonly cells: readonly Reading[];
  readonly warnings: readonly string[];
};

/** One kind of column: whether it claims the column (`share` of the counted cells it can read), and how it reads it. */
export type ColumnReader = {
  readonly kind: ColumnKind;
  readonly fits: (source: ColumnSource, counted: readonly ColumnCell[]) => number;
  readonly read: (source: ColumnSource, neighbours: readonly ColumnSource[]) => ColumnReading;
};

/** How many of the cells hold. */
export const countOf = (cells: readonly ColumnCell[], holds: (cell: ColumnCell) => boolean): number =>
  cells.reduce((count, cell) => count + (holds(cell) ? 1 : 0), 0);

/** Whether one of the words stands in the name. */
export const hasWord = (source: ColumnSource, words: ReadonlySet<string>): boolean =>
  [...source.words].some((word) => words.has(word));
