// Where a place of an entry's body stands in the file.
import type { Span } from "../../core/formula/index.ts";
import type { Entry } from "./notebook.ts";

/** Line and column from 1, length in characters, at least 1 and never past the end of its line. */
export type FilePlace = { readonly line: number; readonly column: number; readonly length: number };

/** The place of a span (offsets in the body) in the file. An empty span has length 1. */
export function placeInFile(entry: Pick<Entry, "body" | "bodyLine">, span: Span): FilePlace {
  const from = Math.max(0, Math.min(span.from, entry.body.length));
  const to = Math.max(from, Math.min(span.to, entry.body.length));
  const before = entry.body.slice(0, from);
  const lines = before.split("\n");
  const lineEnd = entry.body.indexOf("\n", from);
  const end = lineEnd < 0 ? to : Math.min(to, lineEnd);
  return {
    line: entry.bodyLine + lines.length - 1,
    column: (lines.at(-1) ?? "").length + 1,
    length: Math.max(1, end - from),
  };
}
