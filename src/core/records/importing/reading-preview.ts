// A reading cut down to what a page can show: the first rows of each table, the rows with warnings, and every warning counted.
import { codeAt, rawAt, readingAt } from "../cells.ts";
import type { ReadResult, ReadWarning, RecordTable } from "../read-result.ts";
import { readingInWords } from "../reading-in-words.ts";
import { readingWarnings } from "../reading-warnings.ts";
import type {
  ImportCell,
  ImportReading,
  ImportRow,
  ImportTable,
  ImportWarning,
  ImportWarnings,
} from "./import-reading.ts";

/** Rows shown of a table in any case, rows shown for their warnings, and the most of everything, so that a page stays light. */
const SHOWN = { first: 50, warned: 200, cells: 20_000, tables: 20, places: 200, setAside: 200, characters: 500 };

export const sentenceOf = (code: string): string => readingWarnings.get(code) ?? code;
const cut = (text: string): string => (text.length > SHOWN.characters ? `${text.slice(0, SHOWN.characters)}…` : text);

function cell(table: RecordTable, col: number, row: number): ImportCell {
  const cells = table.columns[col]?.cells;
  if (cells === undefined) return { raw: "", reading: "" };
  const code = codeAt(cells, row);
  return {
    raw: cut(rawAt(cells, row)),
    reading: cut(readingInWords(readingAt(cells, row))),
    ...(code === undefined ? {} : { warning: { code, sentence: sentenceOf(code) } }),
  };
}

function tablePreview(table: RecordTable, warnings: readonly ReadWarning[], most: number): ImportTable {
  const ofRow = new Map<number, string[]>();
  const ofColumn = new Map<number, string[]>();
  const warned = new Set<number>();
  for (const { row, col, code } of warnings) {
    if (row !== undefined) warned.add(row);
    if (row !== undefined && col === undefined) ofRow.set(row, [...(ofRow.get(row) ?? []), sentenceOf(code)]);
    if (row === undefined && col !== undefined) ofColumn.set(col, [...(ofColumn.get(col) ?? []), sentenceOf(code)]);
  }
  const first = Array.from({ length: Math.min(SHOWN.first, most, table.rowCount) }, (_, at) => at + 1);
  const others = [...warned].filter((row) => row > first.length).sort((a, b) => a - b);
  const rows = [...first, ...others.slice(0, Math.max(0, Math.min(SHOWN.warned, most - first.length)))];
  return {
    name: table.name,
    rowCount: table.rowCount,
    columns: table.columns.map(({ name, unit, kind }, at) => ({
      name,
      unit,
      kind,
      warnings: ofColumn.get(at + 1) ?? [],
    })),
    rows: rows.map(
      (row): ImportRow => ({
        row,
        record: table.records[row - 1] ?? row,
        warnings: ofRow.get(row) ?? [],
        cells: table.columns.map((_, col) => cell(table, col, row - 1)),
      }),
    ),
  };
}

function byCode(warnings: readonly ReadWarning[]): readonly ImportWarnings[] {
  const groups = new Map<string, { count: number; places: ImportWarning[] }>();
  for (const { table = 1, row, col, code } of warnings) {
    const group = groups.get(code) ?? { count: 0, places: [] };
    groups.set(code, group);
    group.count++;
    if (group.places.length < SHOWN.places)
      group.places.push({ table, ...(row === undefined ? {} : { row }), ...(col === undefined ? {} : { col }) });
  }
  return [...groups].map(([code, group]) => ({ code, sentence: sentenceOf(code), ...group }));
}

type Preview = Pick<
  ImportReading,
  "tables" | "tableCount" | "setAside" | "setAsideCount" | "warnings" | "warningCount"
>;

/** What the page is shown of a reading. rawOf: the text of a record that was set aside, as it stood in the file. */
export function readingPreview(
  { tables, setAside, warnings }: ReadResult,
  rawOf: (record: number) => string = () => "",
): Preview {
  const shown = tables.slice(0, SHOWN.tables);
  const room = SHOWN.cells / Math.max(1, shown.length);
  return {
    tables: shown.map((table, at) =>
      tablePreview(
        table,
        warnings.filter((warning) => (warning.table ?? 1) === at + 1),
        Math.max(5, Math.floor(room / Math.max(1, table.columns.length))),
      ),
    ),
    tableCount: tables.length,
    setAside: setAside.slice(0, SHOWN.setAside).map(({ sheet, record, code }) => ({
      place: [sheet ?? "", record === undefined ? "" : `record ${record}`].filter((part) => part !== "").join(", "),
      sentence: sentenceOf(code),
      raw: record === undefined || sheet !== undefined ? "" : cut(rawOf(record)),
    })),
    setAsideCount: setAside.length,
    warnings: byCode(warnings),
    warningCount: warnings.length,
  };
}
