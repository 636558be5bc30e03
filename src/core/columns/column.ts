// A typed column. Filled before it leaves the function that made it and never written again.
import type { Dimension } from "../units/index.ts";

/** Where a column comes from: a column of a file, or a formula. */
export type ColumnOrigin =
  | { readonly from: "file"; readonly file: string; readonly table: string; readonly col: number }
  | {
      readonly from: "formula";
      readonly formula: string;
      /** Names of the columns that the formula reads directly. */
      readonly parents: readonly string[];
      /** Names of the measured columns it rests on in the end, sorted. */
      readonly roots: readonly string[];
      /** Set where the table's description makes the column, not the notebook: the mean of columns that hold readings of one thing. */
      readonly readings?: true;
      /** Of a formula over groups: the columns that tell the groups apart (null: all rows are one), so that a trace finds the other rows. */
      readonly gathers?: readonly (string | null)[];
    };

type ColumnParts = {
  /** The name in sentences: `final_thickness`. */
  readonly name: string;
  /** The header as it stands in the file, unit removed; for a formula column its name. */
  readonly header: string;
  readonly origin: ColumnOrigin;
  /** Number of cells with a reading warning. */
  readonly warnings: number;
};

//   rows         0      1      2      3
//   values     [ 2.3e-3, NaN,  2.4e-3, 2.2e-3 ]   SI; NaN = missing        unit "mm": how it is shown
//   uncertainty[ 2e-5,   NaN,  2e-5,   2e-5 ]     standard uncertainty, SI; NaN where the value is missing, 0 where none is stated; null when none is known at all
export type QuantityColumn = ColumnParts & {
  readonly kind: "quantity";
  readonly values: Float64Array;
  readonly uncertainty: Float64Array | null;
  /** Canonical UCUM spelling of the unit in which it is shown; "1" where it has none. */
  readonly unit: string;
  readonly dimension: Dimension;
  /** Of a formula column: what each measured column adds to its uncertainty, so that errors shared with another column are not counted twice. */
  readonly contributions?: ReadonlyMap<string, Contribution>;
};

/**
 * What one source of error adds at each row: signed, (d value / d source) * standard uncertainty of the source, SI. The standard uncertainty of
 * the value is the root of the sum of squares over the sources. `shared`: one error for all rows (a value of the notebook), not one a row.
 */
export type Contribution = { readonly values: Float64Array; readonly shared: boolean };

//   codes [ 0, 2, -1, 0 ]   -1 = missing     names [ "cedar", "cypress", "spruce" ]  in order of first appearance, sorted
export type LabelColumn = ColumnParts & {
  readonly kind: "label";
  readonly codes: Int32Array;
  readonly names: readonly string[];
};
/** Ordered grades: `codes` index `levels`, lowest first; -1 = missing. */
export type GradeColumn = ColumnParts & {
  readonly kind: "grade";
  readonly codes: Int32Array;
  readonly levels: readonly string[];
};
/** Days since 1970-01-01 (NaN = missing) beside the text as precise as it was ("2024-05"). */
export type DateColumn = ColumnParts & {
  readonly kind: "date";
  readonly days: Float64Array;
  readonly texts: readonly (string | null)[];
};
/** Frequencies in Hz (NaN = missing) beside the note as written ("G#2 +12c"). Used in a formula it is a frequency. */
export type PitchColumn = ColumnParts & {
  readonly kind: "pitch";
  readonly frequencies: Float64Array;
  readonly texts: readonly (string | null)[];
};
/** Tonal notes in words; null = missing. */
export type WordsColumn = ColumnParts & { readonly kind: "words"; readonly texts: readonly (string | null)[] };
/** 1 yes, 0 no, -1 missing. */
export type YesNoColumn = ColumnParts & { readonly kind: "yes-no"; readonly values: Int8Array };

export type Column = QuantityColumn | LabelColumn | GradeColumn | DateColumn | PitchColumn | WordsColumn | YesNoColumn;
