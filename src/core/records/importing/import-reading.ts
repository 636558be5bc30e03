// What the page shows of a file before it is brought in: raw beside read, what is asked, what is set aside. Plain JSON, from service to page.
import type { ReadOptions } from "../read-options.ts";
import type { TableDescription } from "../table-description.ts";

/** What the maker has said of a file: how it is read, and what its rows and columns are. */
export type ImportAnswers = {
  readonly read: ReadOptions;
  readonly about: Pick<TableDescription, "repeats" | "oneRowPer">;
};

/** One way to answer; `answers` is laid over those that hold. */
export type ImportChoice = { readonly label: string; readonly answers: Partial<ImportAnswers> };

/** `id` is the same whenever the same is asked of the same columns. `columns`: those it is about; none where it is the whole file. */
export type ImportQuestion = {
  readonly id: string;
  readonly code: string;
  readonly sentence: string;
  readonly columns: readonly string[];
  readonly choices: readonly ImportChoice[];
};

export type ImportCell = {
  readonly raw: string;
  readonly reading: string;
  readonly warning?: { readonly code: string; readonly sentence: string };
};
/** `row` and `record` count from 1: in the table, and in the file. */
export type ImportRow = {
  readonly row: number;
  readonly record: number;
  readonly warnings: readonly string[];
  readonly cells: readonly ImportCell[];
};
/** The first rows, and of the others those that have a warning, as far as there is room. */
export type ImportTable = {
  readonly name: string;
  readonly rowCount: number;
  readonly columns: readonly {
    readonly name: string;
    readonly unit: string | null;
    readonly kind: string;
    readonly warnings: readonly string[];
  }[];
  readonly rows: readonly ImportRow[];
};
export type ImportWarning = {
  readonly table: number;
  readonly row?: number;
  readonly col?: number;
};
/** All warnings of one code: how many, what it means, and where the first of them are. */
export type ImportWarnings = {
  readonly code: string;
  readonly sentence: string;
  readonly count: number;
  readonly places: readonly ImportWarning[];
};
export type ImportSetAside = { readonly place: string; readonly sentence: string; readonly raw: string };

export type ImportReading = {
  readonly file: string;
  /** The answers it was read with, and the description they were remembered in. */
  readonly answers: ImportAnswers;
  readonly remembered: string | null;
  readonly tables: readonly ImportTable[];
  readonly tableCount: number;
  readonly setAside: readonly ImportSetAside[];
  readonly setAsideCount: number;
  readonly warnings: readonly ImportWarnings[];
  readonly warningCount: number;
  readonly questions: readonly ImportQuestion[];
  /** Whether a file of that name, with other bytes, is in the folder. */
  readonly exists: boolean;
};
