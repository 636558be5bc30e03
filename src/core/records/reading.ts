// One cell of a file as it was read.
export type CellKind = "quantity" | "text" | "date" | "pitch" | "grade" | "blank" | "unreadable";
export type ColumnKind = "quantity" | "text" | "date" | "pitch" | "grade" | "yes-no";

/** One cell: the raw text as it stood in the file, and what it was read as. `value` is null for blank and unreadable. */
export type Reading = {
  readonly raw: string;
  readonly kind: CellKind;
  readonly value: number | string | null;
  readonly unit: string | null;
  readonly uncertainty?: number;
  readonly code?: string;
};
