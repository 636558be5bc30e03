// What the record grid is shown: some rows of one table of a file, each cell's raw text beside its reading. Plain JSON, from service to page.

/** A trouble with an edit or its log, in words; `line` (from 1) is the log's. */
export type RecordsProblem = { readonly code: string; readonly sentence: string; readonly line?: number };

export type RecordsCell = {
  readonly raw: string;
  /** In words, with the unit: "2.31 ± 0.02 mm". */
  readonly reading: string;
  readonly warning?: { readonly code: string; readonly sentence: string };
  /** Raw text in the file, where an edit has changed it. */
  readonly before?: string;
};

/** `row` and `record` count from 1: in the table, and in the file. `added`: the row is an edit's and not in the file yet. */
export type RecordsRow = {
  readonly row: number;
  readonly record: number;
  readonly setAside?: string;
  readonly added?: true;
  readonly cells: readonly RecordsCell[];
};

export type RecordsWarning = {
  readonly table?: number;
  readonly row?: number;
  readonly col?: number;
  readonly code: string;
  readonly sentence: string;
};

/** Rows `from` and on of those that match (`matching` in all), and what the whole file and table are like. */
export type RecordsPage = {
  readonly file: string;
  /** Digest of the file and its edits: what the next edit names as its base. */
  readonly digest: string;
  /** Whether cells can be edited and records added; false for a workbook, a log of a newer program, a folder that another program holds. */
  readonly editable: boolean;
  /** Whether rows can be set aside and brought back. */
  readonly canSetAside: boolean;
  readonly table: number;
  readonly tables: readonly { readonly name: string; readonly rows: number; readonly columns: number }[];
  readonly columns: readonly {
    readonly name: string;
    readonly unit: string | null;
    readonly kind: string;
    readonly warnings: number;
    /** What the description beside the file says it means. */
    readonly meaning?: string;
  }[];
  readonly rowCount: number;
  readonly matching: number;
  readonly from: number;
  readonly rows: readonly RecordsRow[];
  /** The first 1000 of `warningCount`. */
  readonly warnings: readonly RecordsWarning[];
  readonly warningCount: number;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  /** Edits that stand: not undone, and not written into the file yet. */
  readonly edits: number;
  /** Edits that could not be applied, damage in the log, and why nothing can be edited. */
  readonly problems: readonly RecordsProblem[];
};

/** A file of records in the folder. */
export type RecordsListing = { readonly file: string; readonly tables: number; readonly rows: number };
