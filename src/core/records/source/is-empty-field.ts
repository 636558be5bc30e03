// Whether a field or a record holds anything: looked at by its characters, since every field of a file is asked.
import { fieldAt, type RawRecords } from "./raw-records.ts";

/** Only white space and NULs, or not there at all. */
export const isEmptyField = (raw: string | undefined): boolean =>
  raw === undefined || raw.trim() === "" || raw.replaceAll("\0", "").trim() === "";

/** Whether a field, counted from 0 over all records, is empty. A formula that lost its result is not, though nothing stands there. */
export function isEmptyAt(records: RawRecords, at: number): boolean {
  const start = records.starts[at] ?? 0;
  if (records.apart.size === 0 || !records.apart.has(at)) {
    if (start === records.ends[at]) return records.stored?.[at]?.as !== "lost-formula";
    const code = records.text.charCodeAt(start);
    if (code > 32 && code < 127) return false;
  }
  return isEmptyField(fieldAt(records, at));
}

/** The first field of a record that holds something, counted from 0 over all records; -1 if none does. */
export function firstFilled(records: RawRecords, record: number): number {
  const past = records.firsts[record + 1] ?? 0;
  for (let at = records.firsts[record] ?? 0; at < past; at++) if (!isEmptyAt(records, at)) return at;
  return -1;
}
export const isBlankRecord = (records: RawRecords, record: number): boolean => firstFilled(records, record) < 0;

/** How many fields of a record hold something. */
export function filledCount(records: RawRecords, record: number): number {
  const past = records.firsts[record + 1] ?? 0;
  let count = 0;
  for (let at = records.firsts[record] ?? 0; at < past; at++) if (!isEmptyAt(records, at)) count++;
  return count;
}

/** The first character of a record in lower case, where it is a visible one of ASCII; -1 where only its text can tell. */
export function firstLetter(records: RawRecords, record: number): number {
  const at = records.firsts[record] ?? 0;
  if (at >= (records.firsts[record + 1] ?? 0) || records.starts[at] === records.ends[at]) return -1;
  if (records.apart.size > 0 && records.apart.has(at)) return -1;
  const code = records.text.charCodeAt(records.starts[at] ?? 0);
  return code >= 65 && code <= 90 ? code + 32 : code > 32 && code < 127 ? code : -1;
}
