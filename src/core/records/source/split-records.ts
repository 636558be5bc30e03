// Text to records by the rules of RFC 4180, and what to do where a file does not keep them: stray and unclosed quotes, mixed line ends.
import { limits } from "../../base/index.ts";
import { closingQuote, lastOddRun } from "./closing-quote.ts";
import { openingQuote } from "./opening-quote.ts";
import type { QuoteTrouble, RawRecords } from "./raw-records.ts";
import { stretchEnd } from "./stretch-end.ts";

const LF = 10;
const CR = 13;

/** An array that has room for one more than `length`. */
function roomy(list: Int32Array<ArrayBuffer>, length: number): Int32Array<ArrayBuffer> {
  if (length < list.length) return list;
  const wider = new Int32Array(Math.ceil(list.length * 1.5) + 16);
  wider.set(list);
  return wider;
}

/**
 * The records of a text. `delimiter`: null for a single column; `start`: where the first record begins, after a line that named the
 * delimiter; `most`: stops after so many records that are not blank (0: all). It stops once more cells than the stated limit are
 * found. Time grows with the length of the text.
 */
export function splitRecords(text: string, delimiter: string | null, start = 0, most = 0): RawRecords {
  const { length } = text;
  const mark = delimiter === null ? -1 : delimiter.charCodeAt(0);
  const guess = most > 0 ? 64 : (length >> 3) + 16;
  let [starts, ends, firsts] = [new Int32Array(guess), new Int32Array(guess), new Int32Array((guess >> 2) + 2)];
  const apart = new Map<number, string>();
  const codes = new Map<number, QuoteTrouble>();
  const quotes = text.indexOf('"', start) >= 0;
  const lastOdd = quotes ? lastOddRun(text) : -1;
  let [at, fields, count, filled] = [start, 0, 0, 0];

  while (at < length && fields <= limits.cells.value) {
    firsts = roomy(firsts, count + 1);
    firsts[count++] = fields;
    let some = false;
    for (let open = true; open; ) {
      if (fields >= starts.length) [starts, ends] = [roomy(starts, fields), roomy(ends, fields)];
      const quote = quotes ? openingQuote(text, at, mark) : -1;
      const close = quote < 0 ? -1 : closingQuote(text, quote, lastOdd);
      const from = close < 0 ? at : close + 1;
      const end = stretchEnd(text, from, mark);
      starts[fields] = close < 0 ? at : quote + 1;
      ends[fields] = close < 0 ? end : close;
      if (quote >= 0) {
        const inner = close < 0 ? "" : text.slice(quote + 1, close);
        if (close < 0) codes.set(fields, "unclosed-quote");
        else if (end > from) codes.set(fields, "stray-quote");
        if (close >= 0 && (end > from || inner.includes('"')))
          apart.set(fields, inner.replaceAll('""', '"') + text.slice(from, end));
      }
      if (most > 0) some ||= text.slice(starts[fields], ends[fields]).trim() !== "";
      fields++;
      open = end < length && text.charCodeAt(end) === mark;
      at = open ? end + 1 : end;
    }
    if (at < length) at += text.charCodeAt(at) === CR && text.charCodeAt(at + 1) === LF ? 2 : 1;
    if (some && ++filled === most) break;
  }
  firsts = roomy(firsts, count + 1);
  firsts[count] = fields;
  return {
    count,
    from: start > 0 ? 2 : 1,
    text,
    starts: starts.subarray(0, fields),
    ends: ends.subarray(0, fields),
    firsts: firsts.subarray(0, count + 1),
    apart,
    codes,
    stored: null,
  };
}
