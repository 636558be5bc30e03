import type { TraceCell } from "../base/index.ts";
import type { ColumnTable } from "./column-table.ts";

/** Every raw cell behind a measured value: one, or all its readings where several rows became one. None for computed columns. */
export function cellsBehind(table: ColumnTable, column: string, row: number): readonly TraceCell[] {
  if (table.cellsAt) return table.cellsAt(column, row);
  const cell = table.cellAt(column, row);
  return cell ? [cell] : [];
}
