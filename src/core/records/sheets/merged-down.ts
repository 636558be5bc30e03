// Cells beneath a merged one: the value holds for every row that it stands over.
import { type Cells, readingAt } from "../cells.ts";
import { cellsFromReadings } from "../cells-from-readings.ts";
import type { Reading } from "../reading.ts";
import type { Merge } from "./sheet-grid.ts";

/** Codes that say more of a cell than that it lies beneath a merged one. */
const GRAVER = new Set(
  "bad-character nul-removed unit-differs unit-missing range below-limit above-limit approximate doubtful footnote-mark two-digit-year partial-date serial-date".split(
    " ",
  ),
);

/** The reading that a covered cell has from the top one. */
function beneath(top: Reading): Reading {
  const stays = top.kind === "unreadable" || (top.code !== undefined && GRAVER.has(top.code));
  return { ...top, raw: "", code: stays && top.code !== undefined ? top.code : "merged-cell" };
}

/** Where merged cells end that go down: column -> first row -> last row, all from 0. */
export function mergesDown(merges: readonly Merge[]): ReadonlyMap<number, ReadonlyMap<number, number>> {
  const all = new Map<number, Map<number, number>>();
  for (const { top, bottom, left } of merges) {
    if (bottom === top) continue;
    const own = all.get(left) ?? new Map<number, number>();
    own.set(top, Math.max(bottom, own.get(top) ?? 0));
    all.set(left, own);
  }
  return all;
}

/** A column's cells with the covered ones filled in, and the codes of these by row; null where none is covered. */
export function mergedDown(
  cells: Cells,
  records: Int32Array,
  ends: ReadonlyMap<number, number>,
): { readonly cells: Cells; readonly codes: ReadonlyMap<number, string> } | null {
  const codes = new Map<number, string>();
  const readings: Reading[] = [];
  let [last, top]: [number, Reading | null] = [-1, null];
  for (const [row, record] of records.entries()) {
    const own = readingAt(cells, row);
    const isCovered = record - 1 <= last && own.raw === "";
    if (!isCovered) {
      last = ends.get(record - 1) ?? -1;
      top = last < 0 || own.kind === "blank" ? null : own;
    }
    const reading = isCovered && top ? beneath(top) : own;
    if (reading !== own) codes.set(row, reading.code ?? "");
    readings.push(reading);
  }
  return codes.size === 0 ? null : { cells: cellsFromReadings(readings), codes };
}
