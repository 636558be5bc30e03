// The records of a file as they were split, nothing interpreted: fields are stretches of one text, so that none costs an object.
//
//   text    i d , m m \n A , 2 . 4 \n
//   starts  [ 0,  3,  6,  8 ]           of every field, record after record
//   ends    [ 2,  5,  7,  11 ]
//   firsts  [ 0,  2,  4 ]               first field of each record, and one past the last
import type { StoredCell } from "./stored-cell.ts";

export type QuoteTrouble = "stray-quote" | "unclosed-quote";

/**
 * `from`: the number of the first record in its file or sheet; `apart`: fields that do not stand in the text as they are (doubled quotes);
 * `codes`: trouble with quotes; `stored`: what a workbook keeps of its cells, null for text. The three by field, counted from 0.
 */
export type RawRecords = {
  readonly count: number;
  readonly from: number;
  readonly text: string;
  readonly starts: Int32Array;
  readonly ends: Int32Array;
  readonly firsts: Int32Array;
  readonly apart: ReadonlyMap<number, string>;
  readonly codes: ReadonlyMap<number, QuoteTrouble>;
  readonly stored: readonly (StoredCell | undefined)[] | null;
  /** Blank records of a sheet whose names were joined to those of the record beneath. */
  readonly joined?: ReadonlySet<number>;
};

/** The text of a field, counted from 0 over all records. */
export const fieldAt = ({ text, starts, ends, apart }: RawRecords, at: number): string =>
  (apart.size > 0 ? apart.get(at) : undefined) ?? text.slice(starts[at], ends[at]);

/** How many fields a record has. */
export const widthOf = ({ firsts }: RawRecords, record: number): number =>
  (firsts[record + 1] ?? 0) - (firsts[record] ?? 0);

/** The fields of a record as texts. */
export function fieldsOf(records: RawRecords, record: number): string[] {
  const fields: string[] = [];
  for (let at = records.firsts[record] ?? 0; at < (records.firsts[record + 1] ?? 0); at++)
    fields.push(fieldAt(records, at));
  return fields;
}

/** Records of texts, as a sheet gives them: `stored` holds, record by record, what the sheet keeps of each cell. */
export function rawRecordsOf(
  rows: readonly (readonly string[])[],
  from = 1,
  stored: readonly (readonly (StoredCell | null)[])[] | null = null,
): RawRecords {
  const count = rows.reduce((sum, row) => sum + row.length, 0);
  const [starts, ends, firsts] = [new Int32Array(count), new Int32Array(count), new Int32Array(rows.length + 1)];
  const kept: StoredCell[] | null = stored === null ? null : [];
  const parts: string[] = [];
  let [at, end] = [0, 0];
  for (const [record, row] of rows.entries()) {
    firsts[record] = at;
    for (const [col, field] of row.entries()) {
      const cell = stored?.[record]?.[col];
      if (cell && kept !== null) kept[at] = cell;
      parts.push(field);
      starts[at] = end;
      end += field.length;
      ends[at++] = end;
    }
  }
  firsts[rows.length] = at;
  return {
    count: rows.length,
    from,
    text: parts.join(""),
    starts,
    ends,
    firsts,
    apart: new Map(),
    codes: new Map(),
    stored: kept,
  };
}
