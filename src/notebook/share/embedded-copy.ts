// The data inside a dated copy, as its schema describes it. Plain JSON.
import type { RowRef } from "../../core/base/index.ts";
import type { ColumnOrigin } from "../../core/columns/index.ts";
import type { Dimension } from "../../core/units/index.ts";
import type { NotebookOutline } from "../language/index.ts";
import type { EmbeddedCells } from "./embedded-cells.ts";
import type { StatedResult } from "./stated-result.ts";

type EmbeddedParts = {
  readonly name: string;
  readonly header: string;
  readonly origin: ColumnOrigin;
  readonly warnings: number;
};

type EmbeddedContribution = {
  readonly source: string;
  readonly values: readonly (number | null)[];
  readonly shared: boolean;
};

/** A column with its values as JSON: null where a value is missing. Quantities stay in SI, so nothing is rounded. */
export type EmbeddedColumn = EmbeddedParts &
  (
    | {
        readonly kind: "quantity";
        readonly values: readonly (number | null)[];
        readonly uncertainty: readonly (number | null)[] | null;
        readonly unit: string;
        readonly dimension: Dimension;
        /** Of a mean of readings: what each adds to its uncertainty, so that formulas carry it on as they did. */
        readonly contributions?: readonly EmbeddedContribution[];
      }
    | { readonly kind: "label"; readonly codes: readonly number[]; readonly names: readonly string[] }
    | { readonly kind: "grade"; readonly codes: readonly number[]; readonly levels: readonly string[] }
    | { readonly kind: "date"; readonly days: readonly (number | null)[]; readonly texts: readonly (string | null)[] }
    | {
        readonly kind: "pitch";
        readonly frequencies: readonly (number | null)[];
        readonly texts: readonly (string | null)[];
      }
    | { readonly kind: "words"; readonly texts: readonly (string | null)[] }
    | { readonly kind: "yes-no"; readonly values: readonly number[] }
  );

export type EmbeddedTable = {
  readonly name: string;
  readonly rows: readonly RowRef[];
  readonly leftOut: readonly { readonly index: number; readonly why: string }[];
  readonly shared: string | null;
  readonly finished: string | null;
  readonly notes: readonly string[];
  readonly columns: readonly EmbeddedColumn[];
  /** Raw cells by column, one a row, so that a number in the copy can be traced; null where a row has none. */
  readonly cells: readonly EmbeddedCells[];
};

export type EmbeddedCopy = {
  readonly format: "thumbrule-dated-copy";
  readonly formatVersion: 1;
  readonly date: string;
  readonly version: string;
  readonly notebookText: string;
  /** Where the parts of the text stand, so that the copy reads it without Markdown or YAML. */
  readonly outline: NotebookOutline;
  /** Positions of the dials, in SI. */
  readonly dials: readonly { readonly name: string; readonly value: number }[];
  /** How many columns were held back; their names are not here. */
  readonly withheld: number;
  readonly tables: readonly EmbeddedTable[];
  readonly result: StatedResult;
};
