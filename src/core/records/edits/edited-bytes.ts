// The file with its edits: only the bytes of edited fields and added records are other than before.
import { byteOffsets } from "./byte-offsets.ts";
import { type DelimitedSource, lineEndOf, recordFields, writtenField } from "./delimited-source.ts";
import { encodedText } from "./encoded-text.ts";
import type { AddedRecord, PlacedEdits } from "./placed-edits.ts";

/** Text in place of the characters from `start` to `end` of the file's text. */
type Splice = { readonly start: number; readonly end: number; readonly text: string };

function cellSplices(
  source: DelimitedSource,
  record: number,
  changes: ReadonlyMap<number, { readonly after: string }>,
): Splice[] {
  const delimiter = source.delimiter ?? "";
  const fields = recordFields(source, record);
  const written = (place: number, quoted: boolean) => writtenField(source, changes.get(place)?.after ?? "", quoted);
  const splices: Splice[] = [];
  for (const [place, { start, end, quoted }] of fields.entries())
    if (changes.has(place))
      splices.push({ start: quoted < 0 ? start : quoted, end, text: written(place, quoted >= 0) });
  const width = Math.max(...changes.keys()) + 1;
  const last = fields.at(-1)?.end ?? 0;
  let more = "";
  for (let place = fields.length; place < width; place++) more += delimiter + written(place, false);
  return more === "" ? splices : [...splices, { start: last, end: last, text: more }];
}

function addedSplice(source: DelimitedSource, { after, fields }: AddedRecord): Splice {
  const { outerPipes, spans, first } = source;
  const delimiter = source.delimiter ?? "";
  const body = fields.map((raw) => writtenField(source, raw, false)).join(delimiter);
  const at = spans.ends[after - first] ?? spans.text.length;
  const text = lineEndOf(source, after) + (outerPipes ? `${delimiter}${body}${delimiter}` : body);
  return { start: at, end: at, text };
}

/**
 * The bytes of the file with edits placed on it. Everything else stays: encoding, mark, quoting, spacing, line ends, a missing last one. A
 * character that the encoding lacks was refused when the edit was made; from a damaged log it becomes a question mark.
 */
export function editedBytes(
  source: DelimitedSource,
  { cells, added }: Pick<PlacedEdits, "cells" | "added">,
): Uint8Array {
  const splices = [
    ...[...cells].flatMap(([key, changes]) => cellSplices(source, Number.parseInt(key, 10), changes)),
    ...added.map((record) => addedSplice(source, record)),
  ].sort((a, b) => a.start - b.start);
  if (splices.length === 0) return source.bytes;
  const offsets = byteOffsets(
    source.bytes,
    source.encoding,
    source.skipped,
    splices.flatMap(({ start, end }) => [start, end]),
  );
  const parts: Uint8Array[] = [];
  let at = 0;
  for (const [index, { text }] of splices.entries()) {
    const encoded = encodedText(text, source.encoding);
    parts.push(source.bytes.subarray(at, offsets[2 * index]));
    parts.push(encoded instanceof Uint8Array ? encoded : (encodedText("?", source.encoding) as Uint8Array));
    at = offsets[2 * index + 1] ?? at;
  }
  parts.push(source.bytes.subarray(at));
  const bytes = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let filled = 0;
  for (const part of parts) {
    bytes.set(part, filled);
    filled += part.length;
  }
  return bytes;
}
