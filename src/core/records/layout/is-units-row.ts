// Questions about one record: is it a rule, a total, a header again, a row of units. Each looks at a first character before it makes texts.
import { importUnit } from "../readers/import-unit.ts";
import { firstFilled, isEmptyField } from "../source/is-empty-field.ts";
import { fieldAt, fieldsOf, type RawRecords, widthOf } from "../source/raw-records.ts";
import { fieldSort } from "./field-sort.ts";

const TOTALS = new Set(
  "total totals subtotal sum average avg mean median min max std sd count summe gesamt mittel mittelwert durchschnitt suma media promedio somme moyenne".split(
    " ",
  ),
);
const LONGEST_TOTAL = 16;

const mayBeRule = (records: RawRecords, at: number) => {
  const code = records.text.charCodeAt(records.starts[at] ?? 0);
  return code <= 32 || code === 45 || code === 58 || code > 126 || records.apart.has(at);
};

/** Only dashes and colons, as beneath the header of a table drawn with pipes. */
export function isRule(records: RawRecords, record: number): boolean {
  const first = firstFilled(records, record);
  if (first < 0 || !mayBeRule(records, first)) return false;
  const filled = fieldsOf(records, record).filter((field) => !isEmptyField(field));
  return filled.every((field) => /^ *:?-+:? *$/.test(field.length > 80 ? "" : field));
}

/** Whether the characters of a field leave it open that it is a word for a total. */
function mayBeTotal({ text, starts, ends }: RawRecords, at: number): boolean {
  const [start, end] = [starts[at] ?? 0, ends[at] ?? 0];
  const last = text.charCodeAt(end - 1);
  return end - start <= 2 * LONGEST_TOTAL && !(last >= 48 && last <= 57);
}

/** A word for a total in the first filled field, and a number in another. */
export function isTotal(records: RawRecords, record: number): boolean {
  const at = firstFilled(records, record);
  if (at < 0 || !mayBeTotal(records, at)) return false;
  const word = fieldAt(records, at).trim().toLowerCase();
  if (word.length > LONGEST_TOTAL || !TOTALS.has(word.replace(/\s?:$/, ""))) return false;
  const others = fieldsOf(records, record);
  others.splice(at - (records.firsts[record] ?? 0), 1);
  return others.some((field) => fieldSort(field) === "number");
}

/** Whether two fields are equal, case and outer space aside. */
const isSameField = (records: RawRecords, a: number, b: number): boolean =>
  fieldAt(records, a).trim().toLowerCase() === fieldAt(records, b).trim().toLowerCase();

/** Equal field by field, case and outer space aside; fields missing at the end are empty. */
export function isSameRecord(records: RawRecords, a: number, b: number): boolean {
  const [fromA, fromB] = [records.firsts[a] ?? 0, records.firsts[b] ?? 0];
  const [widthA, widthB] = [widthOf(records, a), widthOf(records, b)];
  const shared = Math.min(widthA, widthB);
  for (let at = 0; at < shared; at++) if (!isSameField(records, fromA + at, fromB + at)) return false;
  for (let at = shared; at < widthA; at++) if (fieldAt(records, fromA + at).trim() !== "") return false;
  for (let at = shared; at < widthB; at++) if (fieldAt(records, fromB + at).trim() !== "") return false;
  return true;
}

/** All filled fields are words: no number, no date, no missing word. */
export const isWords = (fields: readonly string[]): boolean =>
  fields.every((field) => ["empty", "word"].includes(fieldSort(field)));

const inBrackets = (text: string) => /^[([].*[)\]]$/.test(text);

/** The unit of a field of a units row: a code, null for empty, undefined where it is no unit. */
export function unitOfField(raw: string): string | null | undefined {
  const text = raw.trim();
  if (text === "" || text === "-" || text.length > 40) return text.length > 40 ? undefined : null;
  return importUnit(text) ?? (inBrackets(text) ? (importUnit(text.slice(1, -1)) ?? undefined) : undefined);
}

/** A row of units: all filled fields are units, or at least half and the others are single short words without digits. */
export function isUnitsRow(fields: readonly string[]): boolean {
  const units = fields.map(unitOfField).filter((unit) => unit !== null);
  const known = units.filter((unit) => unit !== undefined).length;
  if (known === 0) return false;
  if (known === units.length) return true;
  const others = fields.filter((field) => unitOfField(field) === undefined).map((field) => field.trim());
  return (
    known >= units.length / 2 && others.every((other) => other.length <= 12 && /^[([]?[^\s\d]+[)\]]?$/.test(other))
  );
}
