import type { StoredCell } from "../source/stored-cell.ts";
import { dateFromSerial } from "./date-from-serial.ts";

/** What a number format makes of a number. `unit`: what it writes behind the number, null for nothing; `hours`: whether it shows the time of day. */
export type CellFormat =
  | { readonly sort: "number"; readonly percent: boolean; readonly unit: string | null }
  | { readonly sort: "date"; readonly system: 1900 | 1904; readonly hours: boolean };

export const plainFormat: CellFormat = { sort: "number", percent: false, unit: null };

/** A hundred times a number, in decimals: 0.07 gives 7 and not 7.000000000000001. */
function timesHundred(value: number): number {
  const [digits = "", exponent = "0"] = String(value).split("e");
  return Number(`${digits}e${Number(exponent) + 2}`);
}

/** What a workbook keeps of a number under a format; under a date format a number that is no day stays a number. */
export function storedNumber(value: number, format: CellFormat): StoredCell {
  if (format.sort === "date") {
    const date = dateFromSerial(value, format.system, format.hours);
    return date === null ? { as: "number", value, unit: null } : { as: "date", value: date };
  }
  return format.percent
    ? { as: "number", value: timesHundred(value), unit: "%" }
    : { as: "number", value, unit: format.unit };
}

export const storedText: StoredCell = { as: "text" };
export const storedBoolean: StoredCell = { as: "boolean" };
export const storedError: StoredCell = { as: "error" };
export const lostFormula: StoredCell = { as: "lost-formula" };
