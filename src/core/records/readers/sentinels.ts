// Numbers that people write for "missing": -99, -999, -9999, 999, 9999, where they stand far outside the rest.
import type { Reading } from "../reading.ts";
import type { ColumnSource } from "./column-source.ts";
import { NUMERAL } from "./numeral-counts.ts";

/** Most numbers are ruled out by their size. */
const isSentinel = (value: number) =>
  (value >= 999 || value <= -99) &&
  (value === 999 || value === 9999 || value === -99 || value === -999 || value === -9999);

/** What the other numbers come to. */
type Rest = { readonly largest: number; readonly smallest: number };

/** Largest size and smallest value of the plain numerals that are no sentinels; `rows` takes the rows of those that are. */
function restOfNumerals({ scan, numerals }: ColumnSource, rows: number[]): Rest {
  const { places, numbers } = scan;
  let [largest, smallest] = [-1, Number.POSITIVE_INFINITY];
  if (numerals.all === 0 || numbers === null) return { largest, smallest };
  for (let row = 0; row < places.length; row++) {
    if (places[row] !== NUMERAL) continue;
    const value = numbers[row] ?? 0;
    if (isSentinel(value)) rows.push(row);
    else {
      const size = value < 0 ? -value : value;
      if (size > largest) largest = size;
      if (value < smallest) smallest = value;
    }
  }
  return { largest, smallest };
}

/**
 * The cells and rows whose number is likely a word for missing: over ten times the largest other value in size, or negative where all
 * others are positive. `rows`: rows of plain numerals; `cells`: places among the source's cells.
 */
export function sentinels(source: ColumnSource, readings: readonly Reading[]): { rows: number[]; cells: number[] } {
  const [rows, cells]: [number[], number[]] = [[], []];
  let { largest, smallest } = restOfNumerals(source, rows);
  for (const [cell, { kind, value, uncertainty }] of readings.entries()) {
    if (kind !== "quantity" || typeof value !== "number") continue;
    if (uncertainty === undefined && isSentinel(value)) cells.push(cell);
    else {
      largest = Math.max(largest, Math.abs(value));
      smallest = Math.min(smallest, value);
    }
  }
  if (largest < 0) return { rows: [], cells: [] };
  const isFar = (value: number) => Math.abs(value) > 10 * largest || (value < 0 && smallest > 0);
  return {
    rows: rows.filter((row) => isFar(source.scan.numbers?.[row] ?? 0)),
    cells: cells.filter((cell) => isFar(Number(readings[cell]?.value))),
  };
}
