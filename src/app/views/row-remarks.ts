import type { RecordsPage } from "../../core/records/index.ts";

/** The same list each time, so that a row without remarks is not drawn anew. */
const NONE: readonly string[] = [];

/** Sentences about a row as a whole, by its number; none for a row without. */
export function rowRemarks({ warnings, table: shown }: RecordsPage): (row: number | undefined) => readonly string[] {
  const found = new Map<number, readonly string[]>();
  for (const { table = 1, row, col, sentence } of warnings)
    if (table === shown && row !== undefined && col === undefined)
      found.set(row, [...(found.get(row) ?? NONE), sentence]);
  return (row) => (row === undefined ? NONE : (found.get(row) ?? NONE));
}
