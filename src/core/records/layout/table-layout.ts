// Which records are header, units, rows, and which are set aside; where one table ends and the next begins.
import type { RecordSetAside } from "../read-result.ts";
import type { RawRecord } from "../source/raw-record.ts";
import { isGradeOrPitch, isValue } from "./field-sort.ts";
import { headerPlace } from "./header-place.ts";
import {
  isBlankRecord,
  isComment,
  isRowComment,
  isRule,
  isSameRecord,
  isTotal,
  isUnitsRow,
  isWords,
  recordShape,
} from "./record-shape.ts";

export type TableLayout = {
  readonly header: RawRecord | null;
  readonly units: RawRecord | null;
  readonly rows: readonly RawRecord[];
};
export type Layout = { readonly tables: readonly TableLayout[]; readonly setAside: readonly RecordSetAside[] };

type Aside = (record: RawRecord, code: string) => void;
type Body = { readonly units: RawRecord | null; readonly rows: RawRecord[]; readonly next: number };

const nextFilled = (records: readonly RawRecord[], from: number) => {
  let at = from;
  while (at < records.length && isBlankRecord(records[at] as RawRecord)) at++;
  return at;
};

/** The record beneath a header that tells what its columns hold: units and rules skipped. */
function beneath(records: readonly RawRecord[], header: number): RawRecord | undefined {
  let at = header + 1;
  while (records[at] && (isUnitsRow(records[at] as RawRecord) || isRule(records[at] as RawRecord))) at++;
  return records[at];
}

/** Whether a new table's header stands here: words that differ from the header, over a number, date, grade or pitch. */
function isNewHeader(records: readonly RawRecord[], at: number, header: RawRecord | null): boolean {
  const record = records[at];
  if (!record || recordShape(record) < 2 || (header && isSameRecord(record, header)) || !isWords(record)) return false;
  if (record.fields.some(isGradeOrPitch)) return false;
  const below = beneath(records, at);
  return (
    below !== undefined && record.fields.some((field, col) => field.trim() !== "" && isValue(below.fields[col] ?? ""))
  );
}

/** Rows from `from` until the next table begins; totals, comments, repeated headers are set aside. */
function body(
  records: readonly RawRecord[],
  from: number,
  header: RawRecord | null,
  pipes: boolean,
  aside: Aside,
): Body {
  const rows: RawRecord[] = [];
  let units: RawRecord | null = null;
  let at = from;
  let afterBlank = false;
  const unitsHere = () => {
    while (pipes && records[at] && isRule(records[at] as RawRecord)) aside(records[at++] as RawRecord, "rule-line");
    const record = records[at];
    if (!record || !header || !isUnitsRow(record)) return null;
    aside(record, "units-row");
    at++;
    return record;
  };
  units = unitsHere();
  while (at < records.length) {
    const record = records[at] as RawRecord;
    if (isBlankRecord(record)) afterBlank = true;
    else if (
      afterBlank &&
      (isNewHeader(records, at, header) ||
        (recordShape(record) === 1 && !isRowComment(record) && isNewHeader(records, at + 1, header)))
    )
      break;
    else if (isRowComment(record)) aside(record, "comment");
    else if (pipes && isRule(record)) aside(record, "rule-line");
    else if (header && isSameRecord(record, header)) {
      aside(record, "header-repeated");
      at++;
      unitsHere();
      continue;
    } else if (isTotal(record)) aside(record, "total-row");
    else {
      rows.push(record);
      afterBlank = false;
    }
    at++;
  }
  return { units, rows, next: at };
}

/** Single fields after the last row and a blank record are footnotes in a table of three or more columns. */
function withoutFootnotes(
  records: readonly RawRecord[],
  rows: readonly RawRecord[],
  header: RawRecord | null,
  aside: Aside,
): RawRecord[] {
  const width = Math.max(header ? recordShape(header) : 0, ...rows.slice(0, 50).map((row) => row.fields.length));
  const kept = [...rows];
  if (width < 3) return kept;
  let cut = kept.length;
  for (let at = kept.length - 1; at >= 0 && recordShape(kept[at] as RawRecord) === 1; at--) {
    const before = records[(kept[at] as RawRecord).record - (records[0]?.record ?? 1) - 1];
    if (before && isBlankRecord(before)) cut = at;
  }
  for (const note of kept.splice(cut)) aside(note, "footnote");
  return kept;
}

/** The layout of a file's records. `width`: whether the file has more than one column; `pipes`: rule lines may occur. */
export function tableLayout(records: readonly RawRecord[], pipes: boolean): Layout {
  const setAside: RecordSetAside[] = [];
  const aside: Aside = (record, code) => setAside.push({ record: record.record, code });
  const tables: TableLayout[] = [];
  const first = headerPlace(records);
  let at = first ?? 0;
  for (const record of records.slice(0, first ?? 0))
    if (!isBlankRecord(record))
      aside(record, isComment(record) ? "comment" : pipes && isRule(record) ? "rule-line" : "preamble");
  let header: RawRecord | null = first === null ? null : (records[at++] as RawRecord);
  if (first === null)
    while (at < records.length && (isBlankRecord(records[at] as RawRecord) || isComment(records[at] as RawRecord))) {
      if (!isBlankRecord(records[at] as RawRecord)) aside(records[at] as RawRecord, "comment");
      at++;
    }
  while (at < records.length || header) {
    const { units, rows, next } = body(records, at, header, pipes, aside);
    tables.push({ header, units, rows: withoutFootnotes(records, rows, header, aside) });
    at = nextFilled(records, next);
    if (at >= records.length) break;
    if (recordShape(records[at] as RawRecord) === 1) aside(records[at++] as RawRecord, "preamble");
    header = records[at++] as RawRecord;
  }
  return { tables: tables.filter(({ header: head, rows }) => head !== null || rows.length > 0), setAside };
}
