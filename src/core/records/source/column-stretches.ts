// Where the fields of each column stand in the text: the records hold them row by row, readers want them column by column.
import type { RawCells } from "../cells.ts";
import type { RawRecords } from "./raw-records.ts";

export type Stretches = Pick<RawCells, "starts" | "ends">;

/** Rows that are dealt out to all columns before the next ones, while their fields are near at hand. */
const BLOCK = 512;

/** Copies one column's fields of some rows; a field that is missing is an empty one. */
function copyBlock(records: RawRecords, rows: Int32Array, place: number, into: Stretches, from: number): void {
  const { firsts, starts, ends } = records;
  const past = Math.min(from + BLOCK, rows.length);
  for (let row = from; row < past; row++) {
    const record = rows[row] ?? 0;
    const at = (firsts[record] ?? 0) + place;
    if (at >= (firsts[record + 1] ?? 0)) continue;
    into.starts[row] = starts[at] ?? 0;
    into.ends[row] = ends[at] ?? 0;
  }
}

/** The stretches of the columns at some places of the records. */
export function columnStretches(records: RawRecords, rows: Int32Array, places: readonly number[]): Stretches[] {
  const { length } = rows;
  const columns = places.map((place) => ({
    place,
    into: { starts: new Int32Array(length), ends: new Int32Array(length) },
  }));
  for (let from = 0; from < length; from += BLOCK)
    for (const { place, into } of columns) copyBlock(records, rows, place, into, from);
  return columns.map(({ into }) => into);
}
