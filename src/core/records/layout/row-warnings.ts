// Rows that are too short, too long, or a repetition.
import { isEmptyAt } from "../source/empty-fields.ts";
import { fieldAt, type RawRecords, widthOf } from "../source/raw-records.ts";
import { isSameStretch } from "../source/text-places.ts";
import type { ColumnHead } from "./column-heads.ts";
import type { TableLayout } from "./table-layout.ts";

/** How many fields a record should have: those of the header, else the commonest number. */
function usualLength({ records, header, rows }: TableLayout): number {
  if (header !== null) return widthOf(records, header);
  const counts = new Map<number, number>();
  for (const row of rows) counts.set(widthOf(records, row), (counts.get(widthOf(records, row)) ?? 0) + 1);
  let best = 0;
  for (const [length, count] of counts)
    if (count > (counts.get(best) ?? 0) || (count === counts.get(best) && length > best)) best = length;
  return best;
}

/** Whether two records have equal fields at the places of the columns; a field that is missing is an empty one. */
function isRepetition(records: RawRecords, a: number, b: number, heads: readonly ColumnHead[]): boolean {
  const { text, firsts, starts, ends, apart } = records;
  const [firstA, firstB] = [firsts[a] ?? 0, firsts[b] ?? 0];
  const [widthA, widthB] = [widthOf(records, a), widthOf(records, b)];
  return heads.every(({ place }) => {
    const [atA, atB] = [firstA + place, firstB + place];
    if (apart.size > 0 || place >= widthA || place >= widthB)
      return (place < widthA ? fieldAt(records, atA) : "") === (place < widthB ? fieldAt(records, atB) : "");
    return isSameStretch(text, starts[atA] ?? 0, ends[atA] ?? 0, starts[atB] ?? 0, ends[atB] ?? 0);
  });
}
const MOST_PROBES = 24;

/** Rows that repeat an earlier one. `hashes`: a hash of each row's fields; rows of equal hash are compared. */
function repeatedRows({ records, rows }: TableLayout, heads: readonly ColumnHead[], hashes: Int32Array): Set<number> {
  const repeated = new Set<number>();
  const mask = 2 ** Math.ceil(Math.log2(rows.length * 2 + 16)) - 1;
  const slots = new Int32Array(mask + 1);
  const crowded = new Set<string>();
  for (let row = 0; row < rows.length; row++) {
    let slot = (hashes[row] ?? 0) & mask;
    for (let probe = 0; ; probe++) {
      const other = (slots[slot] ?? 0) - 1;
      if (other < 0) {
        slots[slot] = row + 1;
        break;
      }
      if (hashes[other] === hashes[row] && isRepetition(records, rows[other] ?? 0, rows[row] ?? 0, heads)) {
        repeated.add(row);
        break;
      }
      if (probe === MOST_PROBES) {
        const first = records.firsts[rows[row] ?? 0] ?? 0;
        const width = widthOf(records, rows[row] ?? 0);
        const key = JSON.stringify(heads.map(({ place }) => (place < width ? fieldAt(records, first + place) : "")));
        if (crowded.has(key)) repeated.add(row);
        crowded.add(key);
        break;
      }
      slot = (slot + 1) & mask;
    }
  }
  return repeated;
}

/** Codes by row (from 0). */
export function rowWarnings(
  layout: TableLayout,
  heads: readonly ColumnHead[],
  hashes: Int32Array,
): { row: number; code: string }[] {
  const { records, rows } = layout;
  const length = usualLength(layout);
  const lastOwn = heads.reduce((last, { place }) => (place < length && place > last ? place : last), -1);
  const repeated = repeatedRows(layout, heads, hashes);
  const found: { row: number; code: string }[] = [];
  for (let row = 0; row < rows.length; row++) {
    const record = rows[row] ?? 0;
    const first = records.firsts[record] ?? 0;
    const width = widthOf(records, record);
    if (width <= lastOwn) found.push({ row, code: "short-row" });
    for (let place = length; place < width; place++)
      if (!isEmptyAt(records, first + place)) {
        found.push({ row, code: "long-row" });
        break;
      }
    if (repeated.has(row)) found.push({ row, code: "duplicate-row" });
  }
  return found;
}
