import { calendar } from "../readers/calendar.ts";

const SECONDS = 86_400;
const LAST_DAY = 2_958_465;
const two = (value: number) => String(value).padStart(2, "0");

/** "14:30" of a number of seconds; seconds only if not 00. */
function clock(seconds: number): string {
  const rest = seconds % 60;
  return `${two(Math.floor(seconds / 3600))}:${two(Math.floor(seconds / 60) % 60)}${rest === 0 ? "" : `:${two(rest)}`}`;
}

/**
 * The date of a sheet's day number, with the time of day to the nearest second where the format shows hours; null where there
 * is no such day. The 1900 system counts a 29 February 1900 that never was: number 60 is no day. Source: ECMA-376 part 1, 18.17.4.1.
 */
export function dateFromSerial(serial: number, system: 1900 | 1904, hours: boolean): string | null {
  const seconds = hours ? Math.round(serial * SECONDS) : Math.floor(serial) * SECONDS;
  const day = Math.floor(seconds / SECONDS);
  const since1900 = system === 1904 ? day + 1462 : day < 60 ? day + 1 : day;
  if (day < (system === 1904 ? 0 : 1) || since1900 > LAST_DAY || (system === 1900 && day === 60)) return null;
  return calendar(since1900) + (hours ? `T${clock(seconds - day * SECONDS)}` : "");
}
