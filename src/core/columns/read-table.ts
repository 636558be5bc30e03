// What this room needs of a table as it was read: the shape of a reading, cell by cell.

/** One cell: raw text and what it was read as. `value` is null where it is blank or unreadable. */
export type ReadCell = {
  readonly raw: string;
  readonly kind: string;
  readonly value: number | string | null;
  readonly unit: string | null;
  readonly uncertainty?: number | undefined;
  readonly code?: string | undefined;
};
export type ReadColumn = { readonly name: string; readonly unit: string | null; readonly kind: string };
export type ReadTable = { readonly name: string; readonly columns: readonly ReadColumn[]; readonly rows: readonly (readonly ReadCell[])[] };

/** What the maker says of a column: its unit, its standard uncertainty ("0.02 mm" or an amount), its kind, the name to call it by. */
export type ColumnSaid = {
  readonly kind?: string | undefined;
  readonly unit?: string | undefined;
  readonly uncertainty?: string | { readonly value: number; readonly unit?: string | undefined } | undefined;
  readonly name?: string | undefined;
};
/** What the maker says of a table: columns by header. */
export type TableSaid = { readonly columns?: Readonly<Record<string, ColumnSaid>> | undefined };
