// What a number format of XLSX makes of a number: a date, hundredths, or a number with a unit behind it. How it looks otherwise
// is no concern. Source: ECMA-376 part 1, 18.8.30 (built-in formats) and 18.8.31 (the language of formats).
import { importUnit } from "../readers/import-unit.ts";
import { type CellFormat, plainFormat } from "./cell-format.ts";

/** Built-in formats that matter here; the others are plain numbers. 27 to 36 and 50 to 58 are dates of East Asian calendars. */
const BUILT_IN = new Map([
  [9, "0%"],
  [10, "0.00%"],
  [14, "yyyy-mm-dd"],
  [15, "d-mmm-yy"],
  [16, "d-mmm"],
  [17, "mmm-yy"],
  [22, "yyyy-mm-dd hh:mm"],
  ...[27, 28, 29, 30, 31, 36, 50, 51, 52, 53, 54, 57, 58].map((id): [number, string] => [id, "yyyy-mm-dd"]),
]);

/** A format cut up: `code` with each literal as ^ and "General" as one digit; `tail`: the literal text after the last digit. */
type Section = { readonly code: string; readonly tail: string };
const LONGEST = 255;

/** What "$kg-407" in brackets shows: the currency, which may be a unit. */
const shownIn = (inner: string) => inner.slice(1).split("-")[0] ?? "";

/** The sections of a format: positive, negative, zero, text. Colours, conditions and languages in brackets are dropped; a bare letter stands for itself too. */
function sectionsOf(format: string): Section[] {
  const sections: Section[] = [];
  let [code, tail] = ["", ""];
  const literal = (text: string) => {
    code += "^";
    tail += text;
  };
  for (let at = 0; at < format.length; at++) {
    const char = format[at] ?? "";
    if (char === '"' || char === "[") {
      const close = format.indexOf(char === "[" ? "]" : char, at + 1);
      const end = close < 0 ? format.length : close;
      const inner = format.slice(at + 1, end);
      if (char === '"') literal(inner);
      else if (/^(?:h+|m+|s+)$/i.test(inner)) code += "[]";
      else if (inner.startsWith("$") && importUnit(shownIn(inner)) !== null) literal(shownIn(inner));
      at = end;
    } else if (char === "\\") literal(format[++at] ?? "");
    else if (char === "_" || char === "*") at++;
    else if (char === ";") {
      sections.push({ code, tail });
      [code, tail] = ["", ""];
    } else if ("0#?".includes(char) || /^general$/i.test(format.slice(at, at + 7))) {
      if (!"0#?".includes(char)) at += 6;
      code += "0";
      tail = "";
    } else if (" /-+().:°".includes(char)) literal(char);
    else {
      code += char;
      if (/\p{L}/u.test(char)) tail += char;
    }
  }
  return [...sections, { code, tail }];
}

/** Whether a section shows a day, a month or a year; "m" beside hours or seconds is minutes, brackets count time that has passed. */
function isDate(code: string): boolean {
  const bare = code.replace(/am\^pm|a\^p/gi, "").replace(/s\^?0+/gi, "s");
  if (bare.includes("[") || bare.includes("0")) return false;
  return /[yd]/i.test(bare) || (/m/i.test(bare) && !/[hs]/i.test(bare));
}

/** Text behind the digits that may be a unit: with a letter or a sign of one, and not behind a scaling comma. */
function unitOf({ code, tail }: Section): string {
  const last = code.lastIndexOf("0");
  const text = tail.trim().replace(/^\./, "").replace(/\)$/, "").trim();
  return last < 0 || code[last + 1] === "," || !/[\p{L}%°"″′']/u.test(text) ? "" : text;
}

/** What a format makes of a number. `id`: its number; `code`: its text where the workbook has one; `system`: that of its dates. */
export function numberFormat(id: number, code: string | undefined, system: 1900 | 1904): CellFormat {
  const [first, ...others] = sectionsOf((code ?? BUILT_IN.get(id) ?? "").slice(0, LONGEST));
  if (!first) return plainFormat;
  if (isDate(first.code)) return { sort: "date", system, hours: /h/i.test(first.code) };
  if (first.code.includes("%")) return { sort: "number", percent: true, unit: null };
  const unit = unitOf(first);
  const agreed = others.slice(0, 2).every((section) => !section.code.includes("0") || unitOf(section) === unit);
  return unit === "" || !agreed ? plainFormat : { sort: "number", percent: false, unit: importUnit(unit) ?? unit };
}
