// Finding a record again: by its number where the text is still the same, else wherever that text stands exactly once.
import { rawAt } from "../cells.ts";
import type { ReadResult, RecordTable } from "../read-result.ts";
import { type DelimitedSource, recordText } from "./delimited-source.ts";
import type { RecordAnchor } from "./edit-log-line.ts";

/** Key of a record of the file, or of one that an edit has added. */
export const recordKey = (record: number, sheet = ""): string => `${record} ${sheet}`;
export const addedKey = (edit: number): string => `+${edit}`;

type InFile = Exclude<RecordAnchor, { readonly added: number }>;
/** Number of the record that is meant, null where it is gone or stands there several times. */
export type RecordFinder = (anchor: InFile) => number | null;

function finderOver(
  textOf: (record: number, sheet: string) => string | null,
  all: () => Iterable<readonly [record: number, sheet: string, text: string]>,
): RecordFinder {
  let only: Map<string, number | null> | null = null;
  return ({ record, text, sheet = "" }) => {
    if (textOf(record, sheet) === text) return record;
    if (only === null) {
      only = new Map();
      for (const [each, where, said] of all()) {
        const key = `${where}\u0000${said}`;
        only.set(key, only.has(key) ? null : each);
      }
    }
    return only.get(`${sheet}\u0000${text}`) ?? null;
  };
}

/** Finds records of delimited text. */
export function delimitedFinder(source: DelimitedSource): RecordFinder {
  return finderOver(
    (record) => recordText(source, record),
    () =>
      source.spans.starts.map((_, at) => [at + source.first, "", recordText(source, at + source.first) ?? ""] as const),
  );
}

/** A row of a workbook as the text it is known by: its raw cells parted by tabs. */
export const rowText = ({ columns }: RecordTable, row: number): string =>
  columns.map(({ cells }) => rawAt(cells, row)).join("\t");

/** Finds rows of a workbook. */
export function sheetFinder({ tables }: ReadResult): RecordFinder {
  const texts = new Map<string, readonly [number, string, string]>();
  for (const table of tables)
    for (const [row, record] of table.records.entries()) {
      const sheet = table.sheet ?? table.name;
      texts.set(recordKey(record, sheet), [record, sheet, rowText(table, row)]);
    }
  return finderOver(
    (record, sheet) => texts.get(recordKey(record, sheet))?.[2] ?? null,
    () => texts.values(),
  );
}
