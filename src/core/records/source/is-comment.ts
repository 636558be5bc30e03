import { firstLetter } from "./is-empty-field.ts";
import { fieldAt, type RawRecords, widthOf } from "./raw-records.ts";

const [HASH, SLASH] = [35, 47];
const mayBegin = (letter: number) => letter < 0 || letter === HASH || letter === SLASH;
const firstText = (records: RawRecords, record: number) =>
  widthOf(records, record) === 0 ? "" : fieldAt(records, records.firsts[record] ?? 0).trimStart();

/** Whether the first field begins a comment, as above the header: # or //. */
export function isComment(records: RawRecords, record: number): boolean {
  if (!mayBegin(firstLetter(records, record))) return false;
  const first = firstText(records, record);
  return first.startsWith("#") || first.startsWith("//");
}

/** A comment among the rows: hash and space. */
export const isRowComment = (records: RawRecords, record: number): boolean =>
  mayBegin(firstLetter(records, record)) && firstText(records, record).startsWith("# ");
