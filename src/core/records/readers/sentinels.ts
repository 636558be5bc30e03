// Numbers that people write for "missing": -99, -999, -9999, 999, 9999, where they stand far outside the rest.

import type { Reading } from "../reading.ts";
import { NUMERAL } from "./column-scan.ts";
import type { ColumnSource } from "./column-source.ts";

const SENTINELS = new Set([-99, -999, -9999, 999, 9999]);
/** Below this a number needs no look at the set; most are. */
const SMALLEST = 99;

/**
 * The cells and rows whose number is likely a word for missing: over ten times the largest other value in size, or negative where all
 * others are positive. `rows`: rows of plain numerals; `cells`: places among the source's cells.
 */
export function sentinels(source: ColumnSource, readings: readonly Reading[]): { rows: number[]; cells: number[] } {
  const found: { value: number; row: number; cell: number }[] = [];
  let largest = 0;
  let others = 0;
  let allPositive = true;
  const look = (value: number, row: number, cell: number, exact: boolean) => {
    if (exact && Math.abs(value) >= SMALLEST && SENTINELS.has(value)) found.push({ value, row, cell });
    else {
      others++;
      largest = Math.max(largest, Math.abs(value));
      allPositive &&= value > 0;
    }
  };
  const { places, numbers } = source.scan;
  if (source.numerals.all > 0 && numbers !== null)
    for (let row = 0; row < places.length; row++) if (places[row] === NUMERAL) look(numbers[row] ?? 0, row, -1, true);
  for (const [cell, { kind, value, uncertainty }] of readings.entries())
    if (kind === "quantity" && typeof value === "number") look(value, -1, cell, uncertainty === undefined);
  const far = found.filter(({ value }) => Math.abs(value) > 10 * largest || (value < 0 && allPositive));
  if (others === 0) return { rows: [], cells: [] };
  return {
    rows: far.filter(({ row }) => row >= 0).map(({ row }) => row),
    cells: far.filter(({ cell }) => cell >= 0).map(({ cell }) => cell),
  };
}
