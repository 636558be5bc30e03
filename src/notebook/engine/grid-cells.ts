// The grid's cells of a column, worked out once for as long as the column lives: an edit of one formula leaves the others be.
import type { GridCell } from "../../core/base/index.ts";
import type { Column, ColumnTable } from "../../core/columns/index.ts";
import { readingAt } from "./reading-at.ts";

/** Cells of the first `count` rows of a column. */
export type GridCells = (table: ColumnTable, column: Column, count: number) => readonly GridCell[];

function gridCell(table: ColumnTable, column: Column, row: number): GridCell {
  const cell = table.cellAt(column.name, row);
  if (!cell) return { raw: "", reading: readingAt(column, row) };
  const { raw, reading, warning } = cell;
  return { raw, reading, ...(warning === undefined ? {} : { warning }) };
}

/** A fresh store, owned by one engine. */
export function gridCells(): GridCells {
  const kept = new WeakMap<Column, readonly GridCell[]>();
  return (table, column, count) => {
    const last = kept.get(column);
    if (last && last.length === count) return last;
    const made = Array.from({ length: count }, (_, row) => gridCell(table, column, row));
    kept.set(column, made);
    return made;
  };
}
