import { isDay, isoDay } from "../readers/calendar.ts";
import type { StoredCell } from "../source/stored-cell.ts";
import { storedText } from "./cell-format.ts";

const ISO = /^(\d{4})-(\d{2})-(\d{2})(?:T(\d{2}:\d{2})(?::(\d{2})(\.\d{1,12})?)?Z?)?$/;

/** What a workbook keeps of a date that it stores as text of ISO 8601, to the nearest second; text, where it is no date. */
export function storedDate(written: string): StoredCell {
  const [, year = "", month = "", day = "", time, seconds = "00", part = ""] = ISO.exec(written) ?? [];
  if (!isDay(Number(year), Number(month), Number(day))) return storedText;
  const date = isoDay(Number(year), Number(month), Number(day));
  if (time === undefined) return { as: "date", value: date };
  const moment = Date.parse(`${date}T${time}:${seconds}Z`);
  if (Number.isNaN(moment)) return storedText;
  const rounded = new Date(moment + Math.round(Number(`0${part}`)) * 1000).toISOString();
  return { as: "date", value: rounded.slice(0, rounded.slice(17, 19) === "00" ? 16 : 19) };
}
