// One pass over the fields of a column by their characters: plain numerals become numbers, other texts are kept once each.

import type { RawCells } from "../cells.ts";
import type { RawRecords } from "../source/raw-records.ts";
import { noTexts, placeOf, stretchHash, type TextPlaces } from "../source/text-places.ts";
import { plainNumeral } from "./plain-numeral.ts";
import { storedSort, storedUnit } from "./stored-sort.ts";

/**
 * What is known of the plain numerals of a column together. `bare`: of three digits at most on either side; `padded`: 007. In a workbook
 * they are its stored numbers, which vote for nothing; `unit`: the one that all of them have, `fractions`: how many are not whole.
 */
export type NumeralCounts = {
  readonly all: number;
  /** Those that vote for the point, for the comma, and those whose one mark waits for the column's. */
  readonly point: number;
  readonly comma: number;
  readonly waiting: number;
  /** Those that wait and have a point, or a comma. */
  readonly waitingPoint: number;
  readonly zeros: number;
  readonly bare: number;
  readonly padded: number;
  readonly years: number;
  readonly serials: number;
  readonly unit: string | null;
  readonly fractions: number;
};
/**
 * `places`: by row, the place of its text in `texts`; NUMERAL where `numbers` has its value; from LONE down, a cell of its own in `lone`
 * (by field), which a mark of its own keeps from being one of many. `rowHashes` is what the rows' hashes become with this column.
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
export const NUMERAL = -1;
export const LONE = -2;

const [ONE, TWO, ZERO, MINUS] = [49, 50, 48, 45];
const [FIRST_SERIAL, LAST_SERIAL] = [36526, 54788];

/** Scans a column. `place`: its place in the records; `numerals`: whether they are taken out; `hashes`: a hash a row, to be carried on. */
export function columnScan(
  records: RawRecords,
  rows: Int32Array,
  place: number,
  numerals: boolean,
  hashes: Int32Array | null,
): ColumnScan {
  const { text, firsts, apart, codes, stored } = records;
  const { length } = rows;
  const odd = apart.size > 0 || codes.size > 0 || stored !== null;
  const [starts, ends, places] = [new Int32Array(length), new Int32Array(length), new Int32Array(length)];
  const numbers = new Float64Array(numerals ? length : 0);
  const ownApart = new Map<number, string>();
  const texts = noTexts(text);
  const lone: number[] = [];
  const votes = new Int32Array(6);
  const unit = storedUnit(records, rows, place);
  let [zeros, bare, padded, years, serials, fractions] = [0, 0, 0, 0, 0, 0];
  for (let row = 0; row < length; row++) {
    const record = rows[row] ?? 0;
    const at = (firsts[record] ?? 0) + place;
    const isThere = at < (firsts[record + 1] ?? 0);
    const start = isThere ? (records.starts[at] ?? 0) : 0;
    const end = isThere ? (records.ends[at] ?? 0) : 0;
    starts[row] = start;
    ends[row] = end;
    let hash = stretchHash(text, start, end);
    const cell = isThere ? stored?.get(at) : undefined;
    const sort = cell === undefined ? "text" : storedSort(cell, numerals, unit);
    if (odd && isThere && (apart.has(at) || codes.has(at) || sort === "lone")) {
      const own = apart.get(at);
      if (own !== undefined) {
        ownApart.set(row, own);
        hash = stretchHash(own, 0, own.length);
      }
      places[row] = LONE - (lone.push(at) - 1);
    } else {
      const mayBe = stored === null ? numerals && end > start : sort === "numeral";
      const found = mayBe ? plainNumeral(text, start, end, numbers, row) : 0;
      if (cell?.as === "number" && sort === "numeral") {
        places[row] = NUMERAL;
        numbers[row] = cell.value;
        votes[1] = (votes[1] ?? 0) + 1;
        const decimals = found >> 3;
        if (cell.value === 0) zeros++;
        if (!Number.isInteger(cell.value)) fractions++;
        if (found > 0 && cell.value >= 0 && decimals <= 3 && cell.value < 1000) bare++;
        if ((found & 7) === 1 && cell.value >= 1000 && cell.value < 3000) years++;
        if ((found & 7) === 1 && cell.value >= FIRST_SERIAL && cell.value <= LAST_SERIAL) serials++;
      } else if (found === 0) places[row] = placeOf(texts, start, end, hash);
      else {
        places[row] = NUMERAL;
        const first = text.charCodeAt(start);
        const vote = found & 7;
        votes[vote] = (votes[vote] ?? 0) + 1;
        const [size, decimals] = [end - start, found >> 3];
        if (first === ZERO && size === 1) zeros++;
        if (vote === 1 && size > 1 && first === ZERO) padded++;
        if (first !== MINUS && decimals <= 3 && size - (vote > 1 ? decimals + 1 : 0) <= 3) bare++;
        if (vote === 1 && size === 4 && (first === ONE || first === TWO)) years++;
        const value = numbers[row] ?? 0;
        if (vote === 1 && size === 5 && value >= FIRST_SERIAL && value <= LAST_SERIAL) serials++;
      }
    }
    if (hashes !== null) hashes[row] = Math.imul((hashes[row] ?? 0) ^ hash, 0x27d4eb2f) ^ (hash >>> 13);
  }
  const [, none = 0, point = 0, comma = 0, waitingPoint = 0, waitingComma = 0] = votes;
  const waiting = waitingPoint + waitingComma;
  const all = none + point + comma + waiting;
  return {
    records,
    raw: { text, starts, ends, apart: ownApart },
    places,
    texts,
    lone,
    numbers: all > 0 ? numbers : null,
    numerals: {
      all,
      point,
      comma,
      waiting,
      waitingPoint,
      zeros,
      bare,
      padded,
      years,
      serials,
      unit: unit ?? null,
      fractions,
    },
  };
}
