// What the scan of a column makes of a cell that a workbook keeps as more than text.
import type { RawRecords } from "../source/raw-records.ts";
import type { StoredCell } from "../source/stored-cell.ts";
import { importUnit } from "./import-unit.ts";
import { isInexact } from "./is-inexact.ts";

/** The one unit of a workbook's numbers in a column, null if they have none; undefined where they have several, or one not known. */
export function storedUnit({ firsts, stored }: RawRecords, rows: Int32Array, place: number): string | null | undefined {
  if (stored === null) return null;
  let unit: string | null | undefined;
  for (const record of rows) {
    const at = (firsts[record] ?? 0) + place;
    const cell = at < (firsts[record + 1] ?? 0) ? stored[at] : undefined;
    if (cell?.as !== "number") continue;
    if (unit !== undefined && cell.unit !== unit) return undefined;
    unit = cell.unit;
  }
  return unit === undefined ? null : unit === null || importUnit(unit) !== null ? unit : undefined;
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
