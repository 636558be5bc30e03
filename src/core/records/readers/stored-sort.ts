// What the scan of a column makes of a cell that a workbook keeps as more than text.
import type { RawRecords } from "../source/raw-records.ts";
import type { StoredCell } from "../source/stored-cell.ts";
import { importUnit } from "./import-unit.ts";
import { isInexact } from "./is-inexact.ts";

/**
 * The unit of those numbers of a workbook's column that count as numerals: the one that all have, else none (null) where some have none.
 * Undefined where all of them are to be cells of their own.
 */
export function storedUnit({ firsts, stored }: RawRecords, rows: Int32Array, place: number): string | null | undefined {
  if (stored === null) return null;
  const units = new Set<string | null>();
  for (const record of rows) {
    const at = (firsts[record] ?? 0) + place;
    const cell = at < (firsts[record + 1] ?? 0) ? stored[at] : undefined;
    if (cell?.as === "number") units.add(cell.unit);
  }
  const [only = null] = units;
  if (units.size <= 1) return only === null || importUnit(only) !== null ? only : undefined;
  return units.has(null) ? null : undefined;
}

/** What a stored cell counts as: a numeral, a text like others, or a cell of its own. `unit`: that of the column's numerals. */
export function storedSort(
  cell: StoredCell,
  numerals: boolean,
  unit: string | null | undefined,
): "numeral" | "text" | "lone" {
  if (cell.as === "text" || cell.as === "boolean") return "text";
  if (cell.as !== "number" || isInexact(cell.value)) return "lone";
  if (numerals) return cell.unit === unit ? "numeral" : "lone";
  return cell.unit === null ? "text" : "lone";
}
