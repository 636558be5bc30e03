// One pass over the fields of a column by their characters: plain numerals become numbers, other texts are kept once each.
import type { RawCells } from "../cells.ts";
import type { Stretches } from "../source/column-stretches.ts";
import type { RawRecords } from "../source/raw-records.ts";
import { noTexts, placeOf, stretchHash, type TextPlaces } from "../source/text-places.ts";
import { LONE, NUMERAL, type NumeralCounts, numeralCounts } from "./numeral-counts.ts";
import { plainNumeral } from "./plain-numeral.ts";
import { storedNumerals } from "./stored-numerals.ts";
import { storedSort, storedUnit } from "./stored-sort.ts";

/**
 * `places`: by row, the place of its text in `texts`; NUMERAL where `numbers` has its value; from LONE down, a cell of its own in `lone`
 * (by field), which a mark of its own keeps from being one of many.
 */
export type ColumnScan = {
  readonly records: RawRecords;
  readonly raw: RawCells;
  readonly places: Int32Array;
  readonly texts: TextPlaces;
  readonly lone: readonly number[];
  readonly numbers: Float64Array | null;
  readonly numerals: NumeralCounts;
};

/** Takes out of a scan the cells that are not to be one of many: those with parts joined, trouble with quotes, or more in a workbook. */
function setLone(
  records: RawRecords,
  rows: Int32Array,
  place: number,
  places: Int32Array,
  numerals: boolean,
  unit: string | null | undefined,
) {
  const lone: number[] = [];
  const apart = new Map<number, string>();
  const { firsts, codes, stored } = records;
  if (records.apart.size === 0 && codes.size === 0 && stored === null) return { lone, apart };
  for (let row = 0; row < rows.length; row++) {
    const record = rows[row] ?? 0;
    const at = (firsts[record] ?? 0) + place;
    if (at >= (firsts[record + 1] ?? 0)) continue;
    const own = records.apart.get(at);
    if (own !== undefined) apart.set(row, own);
    const cell = stored?.[at];
    if (own !== undefined || codes.has(at) || (cell && storedSort(cell, numerals, unit) === "lone"))
      places[row] = LONE - (lone.push(at) - 1);
  }
  return { lone, apart };
}

/** Numbers of the rows that are plain numerals, which are marked in `places`; `found`: what is known of each. */
function setNumerals(raw: RawCells, places: Int32Array, numbers: Float64Array, found: Uint8Array): void {
  for (let row = 0; row < places.length; row++)
    if (places[row] === 0) {
      found[row] = plainNumeral(raw.text, raw.starts[row] ?? 0, raw.ends[row] ?? 0, numbers, row);
      if (found[row] !== 0) places[row] = NUMERAL;
    }
}

/** Gives numerals that the maker says are blanks back to the texts. */
function withoutMissing(raw: RawCells, places: Int32Array, found: Uint8Array, missing: ReadonlySet<string>): void {
  for (let row = 0; row < places.length; row++)
    if (places[row] === NUMERAL && missing.has(raw.text.slice(raw.starts[row], raw.ends[row]))) {
      found[row] = 0;
      places[row] = 0;
    }
}

function setTexts(raw: RawCells, places: Int32Array, texts: TextPlaces): void {
  for (let row = 0; row < places.length; row++)
    if (places[row] === 0) {
      const start = raw.starts[row] ?? 0;
      const end = raw.ends[row] ?? 0;
      places[row] = placeOf(texts, start, end, stretchHash(raw.text, start, end));
    }
}

/** Scans a column. `place`: its place in the records; `stretches`: of its fields; `missing`: texts that are blanks; `numerals`: whether they are taken out. */
export function columnScan(
  records: RawRecords,
  rows: Int32Array,
  place: number,
  stretches: Stretches,
  missing: ReadonlySet<string>,
  numerals: boolean,
): ColumnScan {
  const places = new Int32Array(rows.length);
  const unit = storedUnit(records, rows, place);
  const { lone, apart } = setLone(records, rows, place, places, numerals, unit);
  const raw = { text: records.text, ...stretches, apart };
  const numbers = new Float64Array(numerals ? rows.length : 0);
  const found = new Uint8Array(numbers.length);
  if (numerals && records.stored === null) setNumerals(raw, places, numbers, found);
  if (missing.size > 0) withoutMissing(raw, places, found, missing);
  const counts =
    records.stored === null
      ? numeralCounts(raw, numbers, found)
      : storedNumerals(records, rows, place, numerals ? unit : undefined, missing, places, numbers);
  const texts = noTexts(records.text);
  if (counts.all + lone.length < rows.length) setTexts(raw, places, texts);
  return { records, raw, places, texts, lone, numbers: counts.all > 0 ? numbers : null, numerals: counts };
}
