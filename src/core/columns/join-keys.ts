// The keys of two tables that are joined, as numbers: equal keys have equal numbers on both sides.
import type { ColumnTable } from "./column-table.ts";
import { textsOfColumn } from "./piece-names.ts";

/** `left`, `right`: each row's place in `texts`, -1 where it has no key. */
export type JoinKeys = { readonly texts: readonly string[]; readonly left: Int32Array; readonly right: Int32Array };

function placesOf(table: ColumnTable, on: string, known: Map<string, number>): Int32Array {
  const placeOf = (written: string | null): number => {
    const before = written === null ? -1 : known.get(written);
    if (before !== undefined) return before;
    const text = written?.trim().normalize("NFC") ?? "";
    if (text === "") return -1;
    const place = known.get(text) ?? known.size;
    known.set(text, place);
    return place;
  };
  const column = table.columns.get(on);
  if (column?.kind === "label") {
    const places = column.names.map(placeOf);
    return column.codes.map((code) => places[code] ?? -1);
  }
  const texts = column ? textsOfColumn(column, table.rowCount, (row) => table.cellAt(on, row)?.raw ?? "") : [];
  return Int32Array.from(texts, placeOf);
}

/** The keys of both tables in the column `on`: NFC, outer space trimmed, case as it is. */
export function joinKeys(left: ColumnTable, right: ColumnTable, on: string): JoinKeys {
  const known = new Map<string, number>();
  const [leftPlaces, rightPlaces] = [placesOf(left, on, known), placesOf(right, on, known)];
  return { texts: [...known.keys()], left: leftPlaces, right: rightPlaces };
}

/** How many rows have each key; a row that is left out does not count. */
export function keyCounts(places: Int32Array, keys: number, leftOut: { readonly has: (row: number) => boolean }) {
  const counts = new Int32Array(keys);
  for (let row = 0; row < places.length; row++) {
    const place = places[row] ?? -1;
    if (place >= 0 && !leftOut.has(row)) counts[place] = (counts[place] ?? 0) + 1;
  }
  return counts;
}

/** Whether any row has each key: 1 yes, 0 no. */
export function keysPresent(places: Int32Array, keys: number): Uint8Array {
  const present = new Uint8Array(keys);
  for (let row = 0; row < places.length; row++) {
    const place = places[row] as number;
    if (place >= 0) present[place] = 1;
  }
  return present;
}
