// What the graph has computed for one entry: what `report --json` prints and the page shows. Plain JSON.
import type { Finding, Problem, View } from "../../core/base/index.ts";

/** A value or dial as data: SI is converted to `unit`. */
export type AmountResult = {
  readonly value: number | null;
  readonly unit: string;
  readonly uncertainty: number | null;
};
/** A record table or its computed columns, in short. */
export type TableResult = {
  readonly name: string;
  readonly rowCount: number;
  readonly columns: readonly {
    readonly name: string;
    readonly kind: string;
    readonly unit: string;
    readonly warnings: number;
  }[];
  readonly leftOut: readonly { readonly piece: string; readonly why: string }[];
  readonly notes: readonly string[];
};

export type EntryResult = {
  readonly name: string;
  readonly kind: string;
  readonly line: number;
  /** The entry's text as written. */
  readonly asked: string;
  readonly finding?: Finding;
  readonly value?: AmountResult;
  readonly table?: TableResult;
  readonly problems: readonly Problem[];
  readonly view: View;
};

/** A whole notebook, computed. `parts` is the reading order: prose (Markdown) and entries by name. */
export type NotebookResult = {
  readonly notebook: string;
  readonly title: string;
  readonly asOf: string | null;
  readonly version: string;
  readonly parts: readonly (
    | { readonly is: "prose"; readonly text: string }
    | { readonly is: "entry"; readonly name: string }
  )[];
  readonly entries: readonly EntryResult[];
  readonly problems: readonly Problem[];
};
