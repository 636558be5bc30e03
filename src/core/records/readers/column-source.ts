// All that a reader may look at: the column's name and unit, its different cells, and what the maker answered.
import type { ReadOptions } from "../read-options.ts";
import type { ColumnKind, Reading } from "../reading.ts";
import type { StoredCell } from "../source/stored-cell.ts";
import type { ColumnScan } from "./column-scan.ts";
import type { Field } from "./field.ts";
import type { NumeralCounts } from "./numeral-counts.ts";
import type { DraftOrCode } from "./quantity-draft.ts";
import type { specialWords } from "./special-words.ts";

/** A cell of the column, or all cells of the same text as one: `rows` says how many; `stored`: what a workbook keeps of it besides text. */
export type ColumnCell = {
  readonly field: Field;
  /** `said-missing`: by the description of the table. */
  readonly special: ReturnType<typeof specialWords> | "formula-without-value" | "said-missing";
  readonly formula: boolean;
  readonly draft: DraftOrCode | null;
  readonly rows: number;
  readonly stored?: StoredCell;
};
/**
 * `unit`: of the header, else of the units row. `cells`: the different texts of the column, without plain numerals where the scan took
 * them out (`numerals` counts those) and without plain words where only the text reader is to see it: `cellAt` leads from a text of the
 * scan to its cell, and is -1 for a plain word.
 */
export type ColumnSource = {
  readonly name: string;
  /** Words of the name, in lower case. */
  readonly words: ReadonlySet<string>;
  readonly unit: string | null;
  /** What the maker says the column is. */
  readonly kind: ColumnKind | null;
  readonly options: ReadOptions;
  readonly cells: readonly ColumnCell[];
  readonly numerals: NumeralCounts;
  readonly scan: ColumnScan;
  readonly cellAt: Int32Array;
};
/**
 * A column as read: its unit, a reading for each of the source's cells, the codes about the whole column. `numerals`: unit and code of the
 * plain numerals; `rowCodes`: codes of single rows, where the cell has none of its own.
 */
export type ColumnReading = {
  readonly unit: string | null;
  readonly cells: readonly Reading[];
  readonly warnings: readonly string[];
  readonly numerals?: { readonly unit: string | null; readonly code: string | undefined };
  readonly rowCodes?: ReadonlyMap<number, string>;
};

/**
 * One kind of column: in how many of the counted rows it finds what it reads (plain numerals too), and how it reads the column.
 * `readsNumerals`: whether it reads the plain numerals of the source as numbers; left out, it wants them as cells like others.
 */
export type ColumnReader = {
  readonly kind: ColumnKind;
  readonly fits: (source: ColumnSource, counted: readonly ColumnCell[]) => number;
  readonly read: (source: ColumnSource, neighbours: readonly ColumnSource[]) => ColumnReading;
  readonly readsNumerals?: (source: ColumnSource, neighbours: readonly ColumnSource[]) => boolean;
};

/** In how many rows one of the cells stands that hold. */
export const rowsOf = (cells: readonly ColumnCell[], holds: (cell: ColumnCell) => boolean = () => true): number =>
  cells.reduce((count, cell) => count + (holds(cell) ? cell.rows : 0), 0);

/** The words of a column's name, in lower case. */
export const wordsOf = (name: string): ReadonlySet<string> =>
  new Set(
    name
      .toLowerCase()
      .split(/[^\p{L}\p{N}]+/u)
      .filter((word) => word !== ""),
  );

/** Whether one of the words stands in the name. */
export const hasWord = (source: Pick<ColumnSource, "words">, words: ReadonlySet<string>): boolean =>
  [...source.words].some((word) => words.has(word));
