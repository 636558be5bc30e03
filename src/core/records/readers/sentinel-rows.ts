// Numbers that people write for "missing": -99, -999, -9999, 999, 9999, where they stand far outside the rest.
import type { Reading } from "../reading.ts";
import type { ColumnSource } from "./column-source.ts";

const SENTINELS = new Set([-99, -999, -9999, 999, 9999]);

/** The rows whose number is likely a word for missing: over ten times the largest other value in size, or negative where all others are positive. */
export function sentinelRows(source: ColumnSource, cells: readonly Reading[]): Set<number> {
  const rows = new Set<number>();
  let largest = 0;
  let others = 0;
  let allPositive = true;
  for (const [row, { kind, value, uncertainty }] of cells.entries()) {
    if (kind !== "quantity" || typeof value !== "number") continue;
    if (SENTINELS.has(value) && uncertainty === undefined && source.cells[row]?.special === null) rows.add(row);
    else {
      others++;
      largest = Math.max(largest, Math.abs(value));
      allPositive &&= value > 0;
    }
  }
  if (others === 0) return new Set();
  for (const row of rows) {
    const value = Number(cells[row]?.value);
    if (!(Math.abs(value) > 10 * largest || (value < 0 && allPositive))) rows.delete(row);
  }
  return rows;
}
