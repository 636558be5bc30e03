// A workbook's stored numbers in a column, as the plain numerals of a text are: taken out as numbers, and counted together.
import type { RawRecords } from "../source/raw-records.ts";
import { FIRST_SERIAL, LAST_SERIAL, LONE, NUMERAL, type NumeralCounts } from "./numeral-counts.ts";
import { plainNumeral } from "./plain-numeral.ts";
import { storedSort } from "./stored-sort.ts";

/** Marks the rows in `places` and gives their counts. `unit`: the one of the column's numbers, undefined where they are to be cells. */
export function storedNumerals(
  { text, firsts, starts, ends, stored }: RawRecords,
  rows: Int32Array,
  place: number,
  unit: string | null | undefined,
  missing: ReadonlySet<string>,
  places: Int32Array,
  numbers: Float64Array,
): NumeralCounts {
  let [all, zeros, bare, years, serials, fractions] = [0, 0, 0, 0, 0, 0];
  for (const [row, record] of rows.entries()) {
    const at = (firsts[record] ?? 0) + place;
    const cell = at < (firsts[record + 1] ?? 0) ? stored?.[at] : undefined;
    if ((places[row] ?? 0) <= LONE || cell?.as !== "number" || storedSort(cell, numbers.length > 0, unit) !== "numeral")
      continue;
    if (missing.size > 0 && missing.has(text.slice(starts[at], ends[at]))) continue;
    const found = plainNumeral(text, starts[at] ?? 0, ends[at] ?? 0, numbers, row);
    const { value } = cell;
    places[row] = NUMERAL;
    numbers[row] = value;
    all++;
    if (value === 0) zeros++;
    if (!Number.isInteger(value)) fractions++;
    if (found > 0 && value >= 0 && found >> 3 <= 3 && value < 1000) bare++;
    if ((found & 7) === 1 && value >= 1000 && value < 3000) years++;
    if ((found & 7) === 1 && value >= FIRST_SERIAL && value <= LAST_SERIAL) serials++;
  }
  return {
    all,
    point: 0,
    comma: 0,
    waiting: 0,
    waitingPoint: 0,
    zeros,
    bare,
    padded: 0,
    years,
    serials,
    unit: unit ?? null,
    fractions,
  };
}
