// What only a sheet knows of a table's rows, columns and cells: which are hidden, and which lie beneath a merged cell.
import { rawAt, valueAt } from "../cells.ts";
import type { ReadWarning, RecordColumn, RecordTable } from "../read-result.ts";
import { mergedDown, mergesDown } from "./merged-down.ts";
import type { SheetGrid } from "./sheet-grid.ts";

export type MarkedTable = { readonly table: RecordTable; readonly warnings: readonly ReadWarning[] };

/** Rows that are equal to an earlier one, covered cells by their value. */
function repeatedRows(columns: readonly RecordColumn[], rowCount: number): number[] {
  const seen = new Set<string>();
  const repeated: number[] = [];
  for (let row = 0; row < rowCount; row++) {
    const key = JSON.stringify(columns.map(({ cells }) => rawAt(cells, row) || valueAt(cells, row)));
    if (seen.has(key)) repeated.push(row);
    seen.add(key);
  }
  return repeated;
}

/** A table with its cells beneath merged ones filled in. */
function withMergedCells({ table, warnings }: MarkedTable, grid: SheetGrid, left: number): MarkedTable {
  const ends = mergesDown(grid.merges);
  const about: ReadWarning[] = [];
  const columns = table.columns.map((column, at) => {
    const own = ends.get(left + column.place);
    const filled = own ? mergedDown(column.cells, table.records, own) : null;
    for (const [row, code] of filled?.codes ?? []) about.push({ row: row + 1, col: at + 1, code });
    return filled ? { ...column, cells: filled.cells } : column;
  });
  if (about.length === 0) return { table, warnings };
  const repeated = repeatedRows(columns, table.rowCount);
  const others = warnings.filter(({ code }) => code !== "duplicate-row");
  const again = repeated.map((row) => ({ row: row + 1, code: "duplicate-row" }));
  return { table: { ...table, columns, repeatedRows: repeated }, warnings: [...others, ...again, ...about] };
}

/** A table with what its sheet says of it. `left`: the sheet's column of the table's first field. */
export function withSheetMarks(marked: MarkedTable, grid: SheetGrid, left: number): MarkedTable {
  const { table, warnings } = withMergedCells(marked, grid, left);
  const hidden: ReadWarning[] = [];
  for (const [at, { place }] of table.columns.entries())
    if (grid.hiddenColumns.has(left + place)) hidden.push({ col: at + 1, code: "hidden-column" });
  for (const [row, record] of table.records.entries())
    if (grid.hiddenRows.has(record - 1)) hidden.push({ row: row + 1, code: "hidden-row" });
  return { table: { ...table, sheet: grid.name }, warnings: [...warnings, ...hidden] };
}
