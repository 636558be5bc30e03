import type { Estimate, MethodUse, RowRef, Trace, TraceCell, TraceStep } from "../base/index.ts";
import { type Column, type ColumnTable, cellsBehind } from "../columns/index.ts";
import { amountInWords } from "../units/index.ts";
import { columnInWords } from "./column-in-words.ts";

/** Above this many a trace shows the first cells of a column; the rest are in the table, row by row. */
const CELLS = 200;

/** The measured columns that a column rests on in the end: itself, or the roots of its formula. */
export const rootsOf = (column: Column): readonly string[] =>
  column.origin.from === "formula" ? column.origin.roots : [column.name];

/** From the estimates back through the method, the columns with their formulas and the rows to the raw cells. */
export function traceOfAnswer(
  table: ColumnTable,
  estimates: readonly Estimate[],
  method: MethodUse,
  columns: readonly Column[],
  used: readonly RowRef[],
): Trace {
  const wanted = new Set(used.map((ref) => ref.row));
  // A record that was joined to several stands on several rows of the table.
  const places = table.rows.flatMap((ref, at) => (wanted.has(ref.row) ? [at] : []));
  const steps: TraceStep[] = estimates.map((estimate) => ({
    what: "estimate",
    says: `${estimate.name}: ${amountInWords(estimate.value, estimate.standardError ?? null, estimate.unit)}`,
  }));
  steps.push({ what: "method", says: `${method.name}. ${method.source.citation}` });
  const roots = new Set<string>();
  for (const column of columns) {
    for (const root of rootsOf(column)) roots.add(root);
    if (column.origin.from === "formula")
      steps.push({
        what: "formula",
        says: `${columnInWords(column)} is computed`,
        formula: column.origin.formula,
        column: column.name,
      });
    else
      steps.push({
        what: "column",
        says: `${columnInWords(column)} is read from ${column.origin.file}`,
        column: column.name,
      });
  }
  steps.push({ what: "rows", says: `${used.length} records of ${table.name}`, rows: used });
  for (const root of [...roots].sort()) {
    const cells: TraceCell[] = [];
    for (const place of places) {
      if (cells.length > CELLS) break;
      cells.push(...cellsBehind(table, root, place));
    }
    if (cells.length > 0)
      steps.push({
        what: "cells",
        says: cells.length > CELLS ? `the first ${CELLS} cells of ${root}` : `the cells of ${root}`,
        column: root,
        cells: cells.slice(0, CELLS),
      });
  }
  return { steps };
}
