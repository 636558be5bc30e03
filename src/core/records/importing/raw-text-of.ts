// The text of a record as it stands in the file, to show what was set aside.
import type { ReadOptions } from "../read-options.ts";
import { recordsFromText } from "../read-table.ts";
import { sourceText } from "../source/source-text.ts";

/** Gives the text of each record of a file of text, by its number from 1. */
export function rawTextOf(bytes: Uint8Array, options: ReadOptions): (record: number) => string {
  const { text } = sourceText(bytes, options.encoding);
  const { records } = recordsFromText(text, options.delimiter);
  const { from, firsts, starts, ends } = records;
  return (record) => {
    const [first, past] = [firsts[record - from], firsts[record - from + 1]];
    if (record < from) return text.split(/[\r\n]/, 1)[0] ?? "";
    if (first === undefined || past === undefined) return "";
    const [start, end] = [starts[first] ?? 0, ends[past - 1] ?? 0];
    // Fields leave their quotes out; those around the record belong to its text.
    return text.slice(text[start - 1] === '"' ? start - 1 : start, text[end] === '"' ? end + 1 : end);
  };
}
