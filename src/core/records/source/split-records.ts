// Text to records by the rules of RFC 4180, and what to do where a file does not keep them: stray and unclosed quotes, mixed line ends.
import { limits } from "../../base/index.ts";
import { closingQuote, lastOddRun } from "./quote-runs.ts";
import type { QuoteTrouble, RawRecords } from "./raw-records.ts";

const SPACE = 32;
const QUOTE = 34;
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

  /** Where the text after a quoted part begins; the field's quotes are settled here. `from`: where the field begins. */
  const quoted = (from: number): number => {
    let open = from;
    if (mark !== SPACE) while (text.charCodeAt(open) === SPACE) open++;
    if (text.charCodeAt(open) !== QUOTE) return from;
    const close = closingQuote(text, open, lastOdd);
    if (close < 0) {
      codes.set(fields, "unclosed-quote");
      return from;
    }
    starts[fields] = open + 1;
    ends[fields] = close;
    return close + 1;
  };
  /** A field whose closing quote stands at `close` and which goes on to `end`: its parts are joined if it is no one stretch. */
  const settle = (close: number, end: number) => {
    const inner = text.slice(starts[fields], ends[fields]);
    if (end > close) codes.set(fields, "stray-quote");
    if (end > close || inner.includes('"')) apart.set(fields, inner.replaceAll('""', '"') + text.slice(close, end));
  };

  while (at < length && fields <= limits.cells.value) {
    firsts = roomy(firsts, count + 1);
    firsts[count++] = fields;
    let some = false;
    for (let open = true; open; ) {
      if (fields >= starts.length) [starts, ends] = [roomy(starts, fields), roomy(ends, fields)];
      const from = quotes ? quoted(at) : at;
      let end = from;
      let code = -1;
      while (end < length) {
        code = text.charCodeAt(end);
        if (code === mark || code === LF || code === CR) break;
        end++;
      }
      if (from === at) {
        starts[fields] = at;
        ends[fields] = end;
      } else settle(from, end);
      if (most > 0) some ||= text.slice(starts[fields], ends[fields]).trim() !== "";
      fields++;
      open = end < length && code === mark;
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
