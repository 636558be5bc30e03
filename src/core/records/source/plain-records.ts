// The fast way for plain files: no quotes and one kind of line end, where the splitting library and our own rules agree.
import papaparse from "papaparse";
import type { RawRecord } from "./raw-record.ts";

/** The line end of a text without quotes, null where it has quotes or several kinds of line end. */
function plainLineEnd(text: string): string | null {
  if (text.includes('"')) return null;
  const lf = text.includes("\n");
  if (!text.includes("\r")) return "\n";
  if (!lf) return "\r";
  for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1)) if (text[at - 1] !== "\r") return null;
  for (let at = text.indexOf("\r"); at >= 0; at = text.indexOf("\r", at + 1)) if (text[at + 1] !== "\n") return null;
  return "\r\n";
}

/** The records of a plain text, or null where only the full rules will do. */
export function plainRecords(text: string, delimiter: string): RawRecord[] | null {
  const newline = plainLineEnd(text);
  if (newline === null) return null;
  const { data } = papaparse.parse(text, { delimiter, newline, quoteChar: '"', header: false, skipEmptyLines: false });
  if (text.endsWith(newline)) data.pop();
  return data.map((fields, index) => ({ record: index + 1, fields }));
}
