// A table's records as typed cells: each column is claimed by one reader, which reads it with the evidence of its neighbours.
import type { Cells } from "./cells.ts";
import { columnHeads } from "./layout/column-heads.ts";
import { headsAsSaid } from "./layout/heads-as-said.ts";
import { repeatedRows } from "./layout/repeated-rows.ts";
import { rowWarnings } from "./layout/row-warnings.ts";
import type { TableLayout } from "./layout/table-layout.ts";
import { packedCells } from "./packed-cells.ts";
import type { ReadOptions } from "./read-options.ts";
import type { ReadWarning, RecordColumn, RecordTable } from "./read-result.ts";
import { columnReader } from "./readers/column-reader.ts";
import { columnScan } from "./readers/column-scan.ts";
import type { ColumnReader, ColumnReading, ColumnSource } from "./readers/column-source.ts";
import { repeatedIds } from "./readers/repeated-ids.ts";
import { sourceOfColumn } from "./readers/source-of-column.ts";
import { isIdColumn } from "./readers/text-reader.ts";
import { columnStretches } from "./source/column-stretches.ts";
import type { SaidOfTable } from "./table-description.ts";

/** A column with a code on each row whose id an earlier row has; rows that are repeated as a whole are left alone. */
function withRepeatedIds(source: ColumnSource, read: ColumnReading, repeated: ReadonlySet<number>): ColumnReading {
  const rows = repeatedIds(source, read.cells).filter((row) => !repeated.has(row));
  return { ...read, rowCodes: new Map(rows.map((row) => [row, "repeated-id"])) };
}

/** The code of each cell that has one. `col`: from 1. */
function addCellWarnings(warnings: ReadWarning[], { codePlaces, codes }: Cells, col: number): void {
  if (codePlaces === null) return;
  for (let row = 0; row < codePlaces.length; row++) {
    const place = codePlaces[row] ?? 0;
    if (place > 0) warnings.push({ row: row + 1, col, code: codes[place - 1] ?? "" });
  }
}

/** The table and its warnings, without the number of the table. `said`: what the maker says of it beforehand. */
export function tableFromLayout(
  layout: TableLayout,
  name: string,
  options: ReadOptions,
  said: SaidOfTable,
): { table: RecordTable; warnings: ReadWarning[] } {
  const { records, rows } = layout;
  const heads = headsAsSaid(columnHeads(layout), said.columns);
  const missing = new Set(said.missingValues);
  const places = heads.map(({ place }) => place);
  const stretches = columnStretches(records, rows, places);
  const sources = stretches.flatMap((own, at) => {
    const head = heads[at];
    if (!head) return [];
    const names = isIdColumn(head);
    return sourceOfColumn(columnScan(records, rows, head.place, own, missing, !names), head, options, missing, names);
  });
  const readers = sources.map(columnReader);
  const quantities = sources.filter((_, at) => readers[at]?.kind === "quantity");

  /** The source as the column's reader wants it: where it takes no numerals as numbers, they are cells like others. */
  const forReader = (source: ColumnSource, reader: ColumnReader, at: number): ColumnSource => {
    const head = heads[at];
    if (!head || source.numerals.all === 0 || reader.readsNumerals?.(source, quantities)) return source;
    const scan = columnScan(records, rows, head.place, source.scan.raw, missing, false);
    return sourceOfColumn(scan, head, options, missing, reader.kind === "text" && options.aliases === undefined);
  };

  const scans = sources.map(({ scan }) => scan);
  const repeated = new Set(repeatedRows(layout, places, scans));
  const warnings: ReadWarning[] = rowWarnings(layout, heads, repeated).map(({ row, code }) => ({ row: row + 1, code }));
  const columns: RecordColumn[] = [];
  for (const [at, scanned] of sources.entries()) {
    const [reader, head] = [readers[at], heads[at]];
    if (!reader || !head) continue;
    const source = forReader(scanned, reader, at);
    const read = reader.read(source, quantities);
    const isIds = at === 0 && layout.header !== null && isIdColumn(head);
    const cells = packedCells(source, isIds ? withRepeatedIds(source, read, repeated) : read);
    columns.push({ name: head.name, unit: read.unit, kind: reader.kind, place: head.place, cells });
    for (const code of [...head.warnings, ...read.warnings]) warnings.push({ col: at + 1, code });
    addCellWarnings(warnings, cells, at + 1);
  }
  const numbers = rows.map((record) => records.from + record);
  return { table: { name, columns, rowCount: rows.length, records: numbers, repeatedRows: [...repeated] }, warnings };
}
