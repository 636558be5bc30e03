// A file of delimited text as an edit sees it: its records where they stand, and how to write one more in the file's own manner.
import { cellGuard } from "../exports/cell-guard.ts";
import type { ReadOptions } from "../read-options.ts";
import { delimiterVote } from "../source/delimiter-vote.ts";
import { hasForeignSignature } from "../source/is-not-text.ts";
import { rawRecordsOf } from "../source/raw-records.ts";
import { sourceText } from "../source/source-text.ts";
import { withoutOuterPipes } from "../source/without-outer-pipes.ts";
import { type FieldSpan, fieldSpans, type RecordSpans, recordSpans } from "./record-spans.ts";

export type DelimitedSource = {
  readonly bytes: Uint8Array;
  readonly encoding: string;
  /** Bytes of the byte-order mark. */
  readonly skipped: number;
  /** Null in a file of one column. */
  readonly delimiter: string | null;
  readonly spans: RecordSpans;
  /** Number of the first record of the spans: 2 beneath a line `sep=X`. */
  readonly first: number;
  /** Whether the empty fields outside the outer pipes don't count. */
  readonly outerPipes: boolean;
  /** Whether what a spreadsheet would run is guarded in the file, and bare when read. */
  readonly guarded: boolean;
};

const SEPARATOR_LINE = /^sep=([^\r\n])(?:\r\n|\r|\n|$)/i;

/** The source of a file, null where it is no delimited text. The file is split as reading splits it. */
export function delimitedSource(bytes: Uint8Array, options: ReadOptions): DelimitedSource | null {
  if (hasForeignSignature(bytes)) return null;
  const { text, encoding } = sourceText(bytes, options.encoding);
  const line = SEPARATOR_LINE.exec(text.slice(0, 8));
  const from = line ? line[0].length : 0;
  const given = options.delimiter !== undefined && options.delimiter.length === 1 ? options.delimiter : null;
  const delimiter = given ?? line?.[1] ?? delimiterVote(text, from);
  const spans = recordSpans(text, delimiter, from);
  const mark = encoding === "utf-8" ? [0xef, 0xbb, 0xbf] : encoding === "utf-16le" ? [0xff, 0xfe] : [0xfe, 0xff];
  const skipped = encoding !== "windows-1252" && mark.every((byte, at) => bytes[at] === byte) ? mark.length : 0;
  return {
    bytes,
    encoding,
    skipped,
    delimiter,
    spans,
    first: line ? 2 : 1,
    outerPipes: hasOuterPipes(spans),
    guarded: options.guarded === true,
  };
}

function hasOuterPipes(spans: RecordSpans): boolean {
  if (spans.delimiter !== "|") return false;
  const records = rawRecordsOf(spans.starts.map((_, at) => fieldSpans(spans, at).map(({ raw }) => raw)));
  return withoutOuterPipes(records) !== records;
}

/** The raw text of a record of the file, null where there is no such record. */
export function recordText({ spans, first }: DelimitedSource, record: number): string | null {
  const at = record - first;
  const [start, end] = [spans.starts[at], spans.ends[at]];
  return start === undefined || end === undefined ? null : spans.text.slice(start, end);
}

/** The fields of a record by place, those outside outer pipes left out. */
export function recordFields(source: DelimitedSource, record: number): readonly FieldSpan[] {
  const fields = fieldSpans(source.spans, record - source.first);
  const outer = source.outerPipes && fields.length >= 3 && fields[0]?.raw.trim() === "";
  return outer ? fields.slice(1, -1) : fields;
}

/** The line end after a record; where it has none, the file's first one. */
export function lineEndOf({ spans, first }: DelimitedSource, record: number): string {
  const at = record - first;
  const own = spans.text.slice(spans.ends[at], spans.starts[at + 1] ?? spans.text.length);
  return own || spans.text.slice(spans.ends[0], spans.starts[1] ?? spans.ends[0]) || "\n";
}

/** What a field of the file says, as it is read. */
export const readField = ({ guarded }: DelimitedSource, { raw }: FieldSpan): string =>
  guarded ? cellGuard.off(raw) : raw;

/** A field as it is written: in quotes where it was, or where it would be read otherwise without. */
export function writtenField({ delimiter, guarded }: DelimitedSource, raw: string, quoted: boolean): string {
  const text = guarded ? cellGuard.on(raw) : raw;
  const needs = quoted || (delimiter !== null && text.includes(delimiter)) || /["\r\n]/.test(text);
  return needs ? `"${text.replaceAll('"', '""')}"` : text;
}
