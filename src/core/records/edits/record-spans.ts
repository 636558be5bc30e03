// Where records and fields stand in a text, by the same rules as `splitRecords`: what an edit replaces must be what reading reads.
import { closingQuote, lastOddRun } from "../source/closing-quote.ts";
import { openingQuote } from "../source/opening-quote.ts";
import { stretchEnd } from "../source/stretch-end.ts";

const LF = 10;
const CR = 13;

/** Records by number from 0: where each begins and where its content ends, before its line end. */
export type RecordSpans = {
  readonly text: string;
  /** Null in a file of one column. */
  readonly delimiter: string | null;
  readonly starts: readonly number[];
  readonly ends: readonly number[];
  /** Where the last run of quotes of odd length begins: what opens at or after it stays open. */
  readonly lastOdd: number;
};
/** A field from `start` to `end`, spaces and quotes included; `raw`: what it says. `quoted`: where its opening quote stands, -1 if it has none. */
export type FieldSpan = { readonly start: number; readonly end: number; readonly quoted: number; readonly raw: string };

const markOf = (delimiter: string | null): number => delimiter?.charCodeAt(0) ?? -1;

/** The field that begins at `start`. */
function fieldFrom(text: string, start: number, mark: number, lastOdd: number): FieldSpan {
  const quote = openingQuote(text, start, mark);
  const close = quote < 0 ? -1 : closingQuote(text, quote, lastOdd);
  const from = close < 0 ? start : close + 1;
  const end = stretchEnd(text, from, mark);
  const head = close < 0 ? "" : text.slice(quote + 1, close).replaceAll('""', '"');
  return { start, end, quoted: close < 0 ? -1 : quote, raw: head + text.slice(from, end) };
}

/** The fields of a record, by its number from 0. */
export function fieldSpans({ text, delimiter, starts, lastOdd }: RecordSpans, record: number): readonly FieldSpan[] {
  const mark = markOf(delimiter);
  const fields: FieldSpan[] = [];
  for (let at = starts[record] ?? text.length; ; ) {
    const field = fieldFrom(text, at, mark, lastOdd);
    fields.push(field);
    if (field.end >= text.length || text.charCodeAt(field.end) !== mark) return fields;
    at = field.end + 1;
  }
}

/** The records of a text from `from` on. */
export function recordSpans(text: string, delimiter: string | null, from: number): RecordSpans {
  const mark = markOf(delimiter);
  const lastOdd = lastOddRun(text);
  const [starts, ends]: [number[], number[]] = [[], []];
  for (let at = from; at < text.length; ) {
    starts.push(at);
    let { end } = fieldFrom(text, at, mark, lastOdd);
    while (end < text.length && text.charCodeAt(end) === mark) ({ end } = fieldFrom(text, end + 1, mark, lastOdd));
    ends.push(end);
    at = end + (text.charCodeAt(end) === CR && text.charCodeAt(end + 1) === LF ? 2 : 1);
  }
  return { text, delimiter, starts, ends, lastOdd };
}
