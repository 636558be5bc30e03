// Rows that repeat an earlier one: rows of equal hash are compared field by field.
import type { ColumnScan } from "../readers/column-scan.ts";
import { LONE, NUMERAL } from "../readers/numeral-counts.ts";
import { fieldAt, type RawRecords, widthOf } from "../source/raw-records.ts";
import { isSameStretch, stretchHash } from "../source/text-places.ts";
import type { TableLayout } from "./table-layout.ts";

const MOST_PROBES = 24;

/** Mixes a column's fields into the hashes of the rows: a numeral by the bits of its number, another text by its own hash. */
function mixColumn(hashes: Int32Array, { places, texts, numbers, lone, records }: ColumnScan): void {
  const bits = new Int32Array(numbers?.buffer ?? new ArrayBuffer(0));
  const loneHashes = Int32Array.from(lone, (at) => {
    const field = fieldAt(records, at);
    return stretchHash(field, 0, field.length);
  });
  const textHashes = texts.hashes;
  for (let row = 0; row < places.length; row++) {
    const place = places[row] ?? 0;
    let hash = 0;
    if (place >= 0) hash = textHashes[place] ?? 0;
    else if (place === NUMERAL)
      hash = Math.imul((bits[2 * row] ?? 0) ^ Math.imul(bits[2 * row + 1] ?? 0, 0x85ebca6b), 0xc2b2ae35);
    else hash = loneHashes[LONE - place] ?? 0;
    const mixed = Math.imul((hashes[row] ?? 0) ^ hash, 0x27d4eb2f);
    hashes[row] = mixed ^ (mixed >>> 15);
  }
}

/** Whether two records have equal fields at some places; a field that is missing is an empty one. */
function isRepetition(records: RawRecords, a: number, b: number, places: readonly number[]): boolean {
  const { text, firsts, starts, ends, apart } = records;
  const [firstA, firstB] = [firsts[a] ?? 0, firsts[b] ?? 0];
  const [widthA, widthB] = [widthOf(records, a), widthOf(records, b)];
  return places.every((place) => {
    const [atA, atB] = [firstA + place, firstB + place];
    if (apart.size > 0 || place >= widthA || place >= widthB)
      return (place < widthA ? fieldAt(records, atA) : "") === (place < widthB ? fieldAt(records, atB) : "");
    return isSameStretch(text, starts[atA] ?? 0, ends[atA] ?? 0, starts[atB] ?? 0, ends[atB] ?? 0);
  });
}

/** Rows (from 0) whose every field at the columns' places equals that of an earlier row. */
export function repeatedRows(layout: TableLayout, places: readonly number[], scans: readonly ColumnScan[]): number[] {
  const { records, rows } = layout;
  if (scans.some(({ texts }) => texts.size === rows.length)) return [];
  const hashes = new Int32Array(rows.length);
  for (const scan of scans) mixColumn(hashes, scan);
  const mask = 2 ** Math.ceil(Math.log2(rows.length * 2 + 16)) - 1;
  const slots = new Int32Array(mask + 1);
  const crowded = new Set<string>();
  const isRepeated = (row: number): boolean => {
    const record = rows[row] ?? 0;
    let slot = (hashes[row] ?? 0) & mask;
    for (let probe = 0; probe < MOST_PROBES; probe++) {
      const other = (slots[slot] ?? 0) - 1;
      if (other < 0) {
        slots[slot] = row + 1;
        return false;
      }
      if (hashes[other] === hashes[row] && isRepetition(records, rows[other] ?? 0, record, places)) return true;
      slot = (slot + 1) & mask;
    }
    // A file made to collide is no slower than others.
    const [first, width] = [records.firsts[record] ?? 0, widthOf(records, record)];
    const key = JSON.stringify(places.map((place) => (place < width ? fieldAt(records, first + place) : "")));
    const known = crowded.has(key);
    crowded.add(key);
    return known;
  };
  const repeated: number[] = [];
  for (let row = 0; row < rows.length; row++) if (isRepeated(row)) repeated.push(row);
  return repeated;
}
