// Which records are header, units, rows, and which are set aside; where one table ends and the next begins.
import type { RecordSetAside } from "../read-result.ts";
import { isComment, isRowComment } from "../source/is-comment.ts";
import { filledCount, firstLetter, isBlankRecord } from "../source/is-empty-field.ts";
import { fieldsOf, type RawRecords } from "../source/raw-records.ts";
import { isGradeOrPitch, isValue } from "./field-sort.ts";
import { headerPlace } from "./header-place.ts";
import { isRule, isSameRecord, isTotal, isUnitsRow, isWords } from "./is-units-row.ts";

/** Records by their place among the records of the file, from 0. */
export type TableLayout = {
  readonly records: RawRecords;
  readonly header: number | null;
  readonly units: number | null;
  readonly rows: Int32Array;
};
export type Layout = { readonly tables: readonly TableLayout[]; readonly setAside: readonly RecordSetAside[] };

type Aside = (record: number, code: string) => void;
type Body = { readonly units: number | null; readonly rows: Int32Array; readonly next: number };

/** Whether a new table's header stands here: words that differ from the header, over a number, date, grade or pitch. */
function isNewHeader(records: RawRecords, at: number, header: number | null): boolean {
  if (at >= records.count || filledCount(records, at) < 2 || !isWords(fieldsOf(records, at))) return false;
  if (header !== null && isSameRecord(records, at, header)) return false;
  const names = fieldsOf(records, at);
  if (names.some(isGradeOrPitch)) return false;
  let below = at + 1;
  while (below < records.count && (isUnitsRow(fieldsOf(records, below)) || isRule(records, below))) below++;
  if (below >= records.count) return false;
  const values = fieldsOf(records, below);
  return names.some((name, col) => name.trim() !== "" && isValue(values[col] ?? ""));
}

/** The record right beneath another; a header of two rows is where its names are. */
const beneath = ({ joined }: RawRecords, at: number): number => (joined?.has(at + 1) ? at + 2 : at + 1);

/** Rows from `from` until the next table begins; totals, comments, repeated headers are set aside. */
function body(records: RawRecords, from: number, header: number | null, pipes: boolean, aside: Aside): Body {
  const rows: number[] = [];
  let at = from;
  let afterBlank = false;
  const unitsHere = () => {
    while (pipes && at < records.count && isRule(records, at)) aside(at++, "rule-line");
    if (at >= records.count || header === null || !isUnitsRow(fieldsOf(records, at))) return null;
    aside(at, "units-row");
    return at++;
  };
  const isNewTable = () =>
    isNewHeader(records, at, header) ||
    (filledCount(records, at) === 1 &&
      !isRowComment(records, at) &&
      isNewHeader(records, beneath(records, at), header));
  const units = unitsHere();
  const headerMark = header === null ? -1 : firstLetter(records, header);
  for (; at < records.count; at++) {
    const letter = firstLetter(records, at);
    if (letter < 0 && isBlankRecord(records, at)) afterBlank = true;
    else if (afterBlank && isNewTable()) break;
    else if (isRowComment(records, at)) aside(at, "comment");
    else if (pipes && isRule(records, at)) aside(at, "rule-line");
    else if (
      header !== null &&
      (letter === headerMark || letter < 0 || headerMark < 0) &&
      isSameRecord(records, at, header)
    ) {
      aside(at++, "header-repeated");
      unitsHere();
      at--;
    } else if (isTotal(records, at)) aside(at, "total-row");
    else {
      rows.push(at);
      afterBlank = false;
    }
  }
  return { units, rows: Int32Array.from(rows), next: at };
}

/** Single fields after the last row and a blank record are footnotes in a table of three or more columns. */
function withoutFootnotes(records: RawRecords, rows: Int32Array, header: number | null, aside: Aside): Int32Array {
  const widths = Array.from(rows.subarray(0, 50), (row) => fieldsOf(records, row).length);
  if (Math.max(header === null ? 0 : filledCount(records, header), ...widths) < 3) return rows;
  let cut = rows.length;
  for (let at = rows.length - 1; at >= 0 && filledCount(records, rows[at] ?? 0) === 1; at--) {
    const above = rows[at - 1] ?? header ?? -1;
    for (let between = (rows[at] ?? 0) - 1; between > above; between--) if (isBlankRecord(records, between)) cut = at;
  }
  for (const note of rows.subarray(cut)) aside(note, "footnote");
  return rows.subarray(0, cut);
}

/** The layout of a file's records. `pipes`: rule lines may occur. */
export function tableLayout(records: RawRecords, pipes: boolean): Layout {
  const setAside: RecordSetAside[] = [];
  const aside: Aside = (record, code) => setAside.push({ record: records.from + record, code });
  const tables: TableLayout[] = [];
  const first = headerPlace(records);
  const isBlank = (record: number) => isBlankRecord(records, record);
  let at = first ?? 0;
  for (let above = 0; above < at; above++)
    if (!isBlank(above))
      aside(above, isComment(records, above) ? "comment" : pipes && isRule(records, above) ? "rule-line" : "preamble");
  let header: number | null = first === null ? null : at++;
  if (first === null)
    for (; at < records.count && (isBlank(at) || isComment(records, at)); at++) if (!isBlank(at)) aside(at, "comment");
  while (at < records.count || header !== null) {
    const { units, rows, next } = body(records, at, header, pipes, aside);
    tables.push({ records, header, units, rows: withoutFootnotes(records, rows, header, aside) });
    at = next;
    while (at < records.count && isBlank(at)) at++;
    if (at >= records.count) break;
    if (filledCount(records, at) === 1) {
      aside(at, "preamble");
      at = beneath(records, at);
    }
    header = at++;
  }
  return { tables: tables.filter(({ header: head, rows }) => head !== null || rows.length > 0), setAside };
}
