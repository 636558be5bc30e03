// Some rows of an edited file as the grid shows them.
import { codeAt, rawAt, readingAt } from "../cells.ts";
import type { ReadResult, RecordTable } from "../read-result.ts";
import { readingInWords } from "../reading-in-words.ts";
import { readingWarnings } from "../reading-warnings.ts";
import { type EditedRecords, NO_EDITS, type TableEdits } from "./edited-records.ts";
import type { RecordsCell, RecordsPage, RecordsRow, RecordsWarning } from "./records-page.ts";

/** Which rows: `count` of table `table`, from the `from`-th on of those that match. `only` warned: rows with a warning. */
export type PageWish = {
  readonly table: number;
  readonly from: number;
  readonly count: number;
  readonly only: "all" | "warned";
};
const WARNINGS_SHOWN = 1000;

const sentenceOf = (code: string): string => readingWarnings.get(code) ?? code;

function cellOf(table: RecordTable, { before }: TableEdits, row: number, col: number): RecordsCell {
  const cells = table.columns[col]?.cells;
  if (!cells) return { raw: "", reading: "" };
  const code = codeAt(cells, row);
  const was = before.get(row)?.get(col);
  return {
    raw: rawAt(cells, row),
    reading: readingInWords(readingAt(cells, row)),
    ...(code === undefined ? {} : { warning: { code, sentence: sentenceOf(code) } }),
    ...(was === undefined ? {} : { before: was }),
  };
}

function rowOf(table: RecordTable, edits: TableEdits, row: number): RecordsRow {
  const why = edits.setAside.get(row);
  return {
    row: row + 1,
    record: table.records[row] ?? 0,
    ...(why === undefined ? {} : { setAside: why }),
    ...(edits.added.has(row) ? { added: true as const } : {}),
    cells: table.columns.map((_, col) => cellOf(table, edits, row, col)),
  };
}

/** Rows (from 0) of a table that have a warning, of their own or of a cell, in their order. */
function warnedRows({ warnings }: ReadResult, number: number): readonly number[] {
  const rows = new Set<number>();
  for (const { table = 1, row } of warnings) if (table === number && row !== undefined) rows.add(row - 1);
  return [...rows].sort((a, b) => a - b);
}

/** Warnings of each column of a table, its own and its cells'. */
function warningsByColumn({ warnings }: ReadResult, number: number): ReadonlyMap<number, number> {
  const counts = new Map<number, number>();
  for (const { table = 1, col } of warnings)
    if (table === number && col !== undefined) counts.set(col - 1, (counts.get(col - 1) ?? 0) + 1);
  return counts;
}

/** The page of an edited file. `meanings`: what the description says of columns, by their names. A table that it does not have gives a page without rows. */
export function pageOfRecords(
  state: EditedRecords,
  wish: PageWish,
  about: Pick<RecordsPage, "file" | "digest" | "editable" | "canSetAside" | "problems">,
  meanings: ReadonlyMap<string, string> = new Map(),
): RecordsPage {
  const { result, standing } = state;
  const table = result.tables[wish.table - 1];
  const edits = state.tables[wish.table - 1] ?? NO_EDITS;
  const matching = wish.only === "warned" ? warnedRows(result, wish.table) : null;
  const rowCount = table?.rowCount ?? 0;
  const matched = matching?.length ?? rowCount;
  const first = Math.min(wish.from, matched + 1) - 1;
  const places = Array.from({ length: Math.min(wish.count, matched - first) }, (_, at) => first + at);
  const counts = warningsByColumn(result, wish.table);
  return {
    ...about,
    table: wish.table,
    tables: result.tables.map(({ name, rowCount: rows, columns }) => ({ name, rows, columns: columns.length })),
    columns: (table?.columns ?? []).map(({ name, unit, kind }, col) => ({
      name,
      unit,
      kind,
      warnings: counts.get(col) ?? 0,
      ...(meanings.has(name) ? { meaning: meanings.get(name) ?? "" } : {}),
    })),
    rowCount,
    matching: matched,
    from: wish.from,
    rows: table ? places.map((place) => rowOf(table, edits, matching?.[place] ?? place)) : [],
    warnings: result.warnings
      .slice(0, WARNINGS_SHOWN)
      .map((warning): RecordsWarning => ({ ...warning, sentence: sentenceOf(warning.code) })),
    warningCount: result.warnings.length,
    canUndo: standing.undo !== null,
    canRedo: standing.redo !== null,
    edits: standing.edits.length,
  };
}
