// The way back from a finding: estimate, method, columns and formulas, rows, raw cells.
import type { Finding, RowRef, Trace, TraceCell, TraceStep } from "../../core/base/index.ts";
import { type Column, type ColumnTable, cellsBehind } from "../../core/columns/index.ts";
import { amountInWords } from "../../core/units/index.ts";
import { readingAt } from "./reading-at.ts";

const key = (row: RowRef): string => `${row.table}\u0000${row.row}`;

/** Columns of a finding with everything their formulas read, each once, parents after children. */
function columnsBehind(columns: readonly Column[], table: ColumnTable): readonly Column[] {
  const found = new Map<string, Column>();
  const waiting = [...columns];
  for (let next = waiting.shift(); next; next = waiting.shift()) {
    if (found.has(next.name)) continue;
    found.set(next.name, next);
    if (next.origin.from === "formula")
      waiting.push(...[...next.origin.parents, ...next.origin.roots].flatMap((name) => table.columns.get(name) ?? []));
  }
  return [...found.values()];
}

const columnStep = (column: Column): TraceStep =>
  column.origin.from === "formula"
    ? {
        what: "formula",
        says: `${column.name} is computed from ${column.origin.parents.join(", ") || "no column"}`,
        formula: column.origin.formula,
        column: column.name,
      }
    : {
        what: "column",
        says: `${column.name} stands under "${column.header}" in ${column.origin.file}, column ${column.origin.col}`,
        column: column.name,
      };

/** Rows that a measured column is read at: those used, and those that a formula over groups took together with them. */
function rowsBehind(name: string, columns: readonly Column[], table: ColumnTable, used: ReadonlySet<number>) {
  const rows = new Set(used);
  for (const { origin } of columns) {
    if (origin.from !== "formula" || !origin.gathers || !origin.roots.includes(name)) continue;
    for (const by of origin.gathers) for (const row of rowsTogether(by, table, used)) rows.add(row);
  }
  return rows;
}

/** Rows of the groups that some rows are in; all rows where no column tells the groups apart. A row left out is in none. */
function rowsTogether(by: string | null, table: ColumnTable, some: ReadonlySet<number>): readonly number[] {
  const column = by === null ? undefined : table.columns.get(by);
  const all = Array.from({ length: table.rowCount }, (_, row) => row).filter((row) => !table.leftOut.has(row));
  if (!column) return all;
  const groups = new Set([...some].map((row) => readingAt(column, row)));
  return all.filter((row) => groups.has(readingAt(column, row)));
}

/** Raw cells of the measured columns behind the rows used, row by row, at most `most`. */
function rawCells(
  columns: readonly Column[],
  table: ColumnTable,
  used: readonly RowRef[],
  most: number,
): readonly TraceCell[] {
  const wanted = new Set(used.map(key));
  const usedRows = new Set(table.rows.flatMap((reference, row) => (wanted.has(key(reference)) ? [row] : [])));
  const measured = columns
    .filter((column) => column.origin.from === "file")
    .map(({ name }) => ({ name, rows: rowsBehind(name, columns, table, usedRows) }));
  // A record that was joined to several stands on several rows; its cell is named once.
  const cells = new Map<string, TraceCell>();
  for (let row = 0; row < table.rowCount && cells.size < most; row++)
    for (const { name, rows } of measured)
      for (const cell of rows.has(row) ? cellsBehind(table, name, row) : [])
        cells.set(JSON.stringify([cell.file, cell.table, cell.row, cell.col]), cell);
  return [...cells.values()].slice(0, most);
}

/** The whole trace of a finding; `most` limits the raw cells it carries, not what it says. */
export function traceOf(
  finding: Finding,
  table: ColumnTable,
  columns: readonly Column[],
  most = Number.POSITIVE_INFINITY,
): Trace {
  if (finding.kind === "refused") return { steps: [{ what: "refused", says: finding.sentence }] };
  const behind = columnsBehind(columns, table);
  const { used, setAside } = finding.rows;
  const cells = rawCells(behind, table, used, most);
  const files = [...new Set(behind.flatMap((column) => (column.origin.from === "file" ? [column.origin.file] : [])))];
  return {
    steps: [
      ...finding.estimate.map(
        (each): TraceStep => ({
          what: "estimate",
          says: `${each.name}: ${amountInWords(each.value, each.standardError ?? null, each.unit)}`,
        }),
      ),
      {
        what: "method",
        says: `${finding.method.name}: ${finding.method.chosenBecause} (${finding.method.source.citation})`,
      },
      ...behind.map(columnStep),
      {
        what: "rows",
        says: `${used.length} records of ${table.name} take part, ${setAside.length} are set aside`,
        rows: used,
      },
      { what: "cells", says: `${cells.length} raw cells`, cells },
      ...files.map((file): TraceStep => ({ what: "file", says: file })),
    ],
  };
}
