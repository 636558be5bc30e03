// Questions about one record: is it blank, a comment, a rule, a total, a header again, a row of units.
import { importUnit } from "../readers/import-unit.ts";
import type { RawRecord } from "../source/raw-record.ts";
import { fieldSort, isEmptyField } from "./field-sort.ts";

const TOTALS = new Set(
  "total totals subtotal sum average avg mean median min max std sd count summe gesamt mittel mittelwert durchschnitt suma media promedio somme moyenne".split(
    " ",
  ),
);

/** How many fields of a record hold something. */
export const recordShape = (record: RawRecord): number =>
  record.fields.reduce((count, field) => count + (isEmptyField(field) ? 0 : 1), 0);
export const isBlankRecord = (record: RawRecord): boolean => record.fields.every(isEmptyField);

/** A comment above the header. */
export function isComment(record: RawRecord): boolean {
  const first = record.fields[0]?.trimStart() ?? "";
  return first.startsWith("#") || first.startsWith("//");
}
/** A comment among the rows: hash and space. */
export const isRowComment = (record: RawRecord): boolean => record.fields[0]?.trimStart().startsWith("# ") ?? false;

/** Only dashes and colons, as beneath the header of a table drawn with pipes. */
export function isRule(record: RawRecord): boolean {
  const filled = record.fields.filter((field) => !isEmptyField(field));
  return filled.length > 0 && filled.every((field) => /^ *:?-+:? *$/.test(field.length > 80 ? "" : field));
}

/** A word for a total in the first filled field, and a number in another. */
export function isTotal(record: RawRecord): boolean {
  const at = record.fields.findIndex((field) => !isEmptyField(field));
  const word = (record.fields[at] ?? "").trim().toLowerCase();
  if (word.length > 16 || !TOTALS.has(word.replace(/\s?:$/, ""))) return false;
  return record.fields.some((field, other) => other !== at && fieldSort(field) === "number");
}

/** Equal field by field, case and outer space aside. */
export function isSameRecord(a: RawRecord, b: RawRecord): boolean {
  const length = Math.max(a.fields.length, b.fields.length);
  for (let at = 0; at < length; at++)
    if ((a.fields[at] ?? "").trim().toLowerCase() !== (b.fields[at] ?? "").trim().toLowerCase()) return false;
  return true;
}

/** All filled fields are words: no number, no date, no missing word. */
export const isWords = (record: RawRecord): boolean =>
  record.fields.every((field) => ["empty", "word"].includes(fieldSort(field)));

const inBrackets = (text: string) => /^[([].*[)\]]$/.test(text);

/** The unit of a field of a units row: a code, null for empty, undefined where it is no unit. */
export function unitOfField(raw: string): string | null | undefined {
  const text = raw.trim();
  if (text === "" || text === "-" || text.length > 40) return text.length > 40 ? undefined : null;
  return importUnit(text) ?? (inBrackets(text) ? (importUnit(text.slice(1, -1)) ?? undefined) : undefined);
}

/** A row of units: all filled fields are units, or at least half and the others are single short words without digits. */
export function isUnitsRow(record: RawRecord): boolean {
  const units = record.fields.map(unitOfField).filter((unit) => unit !== null);
  const known = units.filter((unit) => unit !== undefined).length;
  if (known === 0) return false;
  if (known === units.length) return true;
  const others = record.fields.filter((field) => unitOfField(field) === undefined).map((field) => field.trim());
  return (
    known >= units.length / 2 && others.every((other) => other.length <= 12 && /^[([]?[^\s\d]+[)\]]?$/.test(other))
  );
}
