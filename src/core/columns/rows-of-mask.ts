import type { ColumnTable } from "./column-table.ts";

/** Indices of the rows that are not left out and, where a mask is given, have 1 in it. */
export function rowsOfMask(table: ColumnTable, mask: Uint8Array | null = null): Int32Array {
  const rows: number[] = [];
  for (let row = 0; row < table.rowCount; row++)
    if (!table.leftOut.has(row) && (mask === null || mask[row] === 1)) rows.push(row);
  return Int32Array.from(rows);
}
