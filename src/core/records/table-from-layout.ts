// A table's records as typed cells: each column is claimed by one reader, which reads it with the evidence of its neighbours.

import { cellsFromReadings } from "./cells-from-readings.ts";
import { columnHeads } from "./layout/column-heads.ts";
import { rowWarnings } from "./layout/row-warnings.ts";
import type { TableLayout } from "./layout/table-layout.ts";
import type { ReadOptions } from "./read-options.ts";
import type { ReadWarning, RecordColumn, RecordTable } from "./read-result.ts";
import { columnReader } from "./readers/column-reader.ts";
import type { ColumnCell, ColumnSource } from "./readers/column-source.ts";
import { field } from "./readers/field.ts";
import { quantityDraft } from "./readers/quantity-draft.ts";
import { isFormulaLike, specialWords } from "./readers/special-words.ts";
import { isIdColumn } from "./readers/text-reader.ts";
import type { Reading } from "./reading.ts";

const wordsOf = (name: string) =>
  new Set(
    name
      .toLowerCase()
      .split(/[^\p{L}\p{N}]+/u)
      .filter((word) => word !== ""),
  );

function cellOf(
  raw: string,
  trouble: "stray-quote" | "unclosed-quote" | undefined,
  unit: string | null,
  names: boolean,
): ColumnCell {
  const from = field(raw, trouble);
  const special = specialWords(from.text);
  const formula = special === null && isFormulaLike(from.text);
  return {
    field: from,
    special,
    formula,
    draft: special !== null || formula || names ? null : quantityDraft(from.text, unit),
  };
}

/** In an id column that stands first, a value seen before; rows that are repeated as a whole are left alone. */
function withRepeatedIds(cells: readonly Reading[], repeated: ReadonlySet<number>): Reading[] {
  const filled = cells.filter((cell) => cell.kind !== "blank");
  const different = new Set(filled.map((cell) => cell.value)).size;
  if (filled.length === 0 || different < 0.8 * filled.length) return [...cells];
  const seen = new Set<Reading["value"]>();
  return cells.map((cell, row) => {
    const again = cell.kind === "text" && seen.has(cell.value);
    if (cell.kind === "text") seen.add(cell.value);
    return again && !repeated.has(row) && cell.code === undefined ? { ...cell, code: "repeated-id" } : cell;
  });
}

/** The table and its warnings, without the number of the table. */
export function tableFromLayout(
  layout: TableLayout,
  name: string,
  options: ReadOptions,
): { table: RecordTable; warnings: ReadWarning[] } {
  const heads = columnHeads(layout);
  const sources: ColumnSource[] = heads.map((head) => {
    const bare = { name: head.name, words: wordsOf(head.name), unit: head.unit, cells: [], options };
    const names = isIdColumn(bare);
    const cells = layout.rows.map(({ fields, codes }) =>
      cellOf(fields[head.place] ?? "", codes?.get(head.place), head.unit, names),
    );
    return { ...bare, cells };
  });
  const readers = sources.map(columnReader);
  const quantities = sources.filter((_, at) => readers[at]?.kind === "quantity");
  const aboutRows = rowWarnings(layout, heads);
  const repeated = new Set(aboutRows.filter(({ code }) => code === "duplicate-row").map(({ row }) => row));
  const warnings: ReadWarning[] = aboutRows.map(({ row, code }) => ({ row: row + 1, code }));
  const columns: RecordColumn[] = [];
  for (const [at, source] of sources.entries()) {
    const reader = readers[at];
    if (!reader) continue;
    const read = reader.read(source, quantities);
    const cells = at === 0 && isIdColumn(source) && layout.header ? withRepeatedIds(read.cells, repeated) : read.cells;
    columns.push({
      name: source.name,
      unit: read.unit,
      kind: reader.kind,
      place: heads[at]?.place ?? at,
      cells: cellsFromReadings(cells),
    });
    for (const code of [...(heads[at]?.warnings ?? []), ...read.warnings]) warnings.push({ col: at + 1, code });
    for (const [row, cell] of cells.entries())
      if (cell.code !== undefined) warnings.push({ row: row + 1, col: at + 1, code: cell.code });
  }
  const records = Int32Array.from(layout.rows, ({ record }) => record);
  return { table: { name, columns, rowCount: layout.rows.length, records, repeatedRows: [...repeated] }, warnings };
}
