// Text to records by the rules of RFC 4180, and what to do where a file does not keep them: stray and unclosed quotes, mixed line ends.
import type { RawRecord } from "./raw-record.ts";

const QUOTE = 34;
const LF = 10;
const CR = 13;
type QuoteTrouble = "stray-quote" | "unclosed-quote";

function runLength(text: string, start: number): number {
  let end = start;
  while (text.charCodeAt(end) === QUOTE) end++;
  return end - start;
}

/** Where the last run of quotes of odd length begins, -1 if there is none: what opens at or after it stays open. */
function lastOddRun(text: string): number {
  let last = -1;
  for (let at = text.indexOf('"'); at >= 0; ) {
    const run = runLength(text, at);
    if (run % 2 === 1) last = at;
    at = text.indexOf('"', at + run);
  }
  return last;
}

/** Position of the quote that closes the field opened at `open`, or -1. Doubled quotes inside are one character. */
function closingQuote(text: string, open: number, lastOdd: number): number {
  const first = runLength(text, open);
  if (first % 2 === 0) return open + first - 1;
  if (lastOdd <= open) return -1;
  for (let at = text.indexOf('"', open + first); at >= 0; ) {
    const run = runLength(text, at);
    if (run % 2 === 1) return at + run - 1;
    at = text.indexOf('"', at + run);
  }
  return -1;
}

/** One field from `at`: its text, where it ends, and trouble with its quotes. */
function fieldFrom(
  text: string,
  at: number,
  mark: number,
  lastOdd: number,
): { field: string; end: number; trouble: QuoteTrouble | null } {
  let start = at;
  while (text.charCodeAt(start) === 32) start++;
  let head = "";
  let from = at;
  let trouble: QuoteTrouble | null = null;
  if (text.charCodeAt(start) === QUOTE) {
    const close = closingQuote(text, start, lastOdd);
    if (close < 0) trouble = "unclosed-quote";
    else {
      head = text.slice(start + 1, close).replaceAll('""', '"');
      from = close + 1;
    }
  }
  let end = from;
  for (let code = text.charCodeAt(end); end < text.length && code !== mark && code !== LF && code !== CR; )
    code = text.charCodeAt(++end);
  if (from !== at && end > from) trouble = "stray-quote";
  return { field: head + text.slice(from, end), end, trouble };
}

/** The records of a text. `most` stops after so many records that are not blank (0: all). Time grows with the length of the text. */
export function splitRecords(text: string, delimiter: string, most = 0): RawRecord[] {
  const records: RawRecord[] = [];
  const mark = delimiter.charCodeAt(0);
  const lastOdd = lastOddRun(text);
  let at = 0;
  let filled = 0;
  while (at < text.length) {
    const fields: string[] = [];
    const codes = new Map<number, QuoteTrouble>();
    for (let open = true; open; ) {
      const { field, end, trouble } = fieldFrom(text, at, mark, lastOdd);
      if (trouble) codes.set(fields.length, trouble);
      fields.push(field);
      open = end < text.length && text.charCodeAt(end) === mark;
      at = open ? end + 1 : end;
    }
    if (at < text.length) at += text.charCodeAt(at) === CR && text.charCodeAt(at + 1) === LF ? 2 : 1;
    records.push({ record: records.length + 1, fields, ...(codes.size > 0 ? { codes } : {}) });
    if (most > 0 && fields.some((field) => field.trim() !== "") && ++filled === most) break;
  }
  return records;
}
