import { Defect } from "../base/index.ts";
import type { Column } from "./column.ts";
import { columnLength } from "./column-length.ts";
import type { ColumnTable } from "./column-table.ts";

/** The table with one more column, or with that column in place of the one of the same name. Its length must be the table's. */
export function withColumn(table: ColumnTable, column: Column): ColumnTable {
  if (columnLength(column) !== table.rowCount)
    throw new Defect(`column ${column.name} has ${columnLength(column)} rows, the table ${table.rowCount}`);
  return { ...table, columns: new Map(table.columns).set(column.name, column) };
}
