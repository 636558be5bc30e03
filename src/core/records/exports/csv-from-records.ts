// The raw cells of a record table as CSV: what is read from it is what was read before.
import { kindAt, rawAt, unitAt } from "../cells.ts";
import { freeName } from "../layout/column-heads.ts";
import type { RecordColumn, RecordTable } from "../read-result.ts";
import type { TableDescription } from "../table-description.ts";
import { csvReadBy, csvText } from "./csv-text.ts";
import { headerWithUnit } from "./header-with-unit.ts";

/** Whether a unit in the header would say something else of a bare number that has none. */
function hasBareNumbers({ cells }: RecordColumn): boolean {
  for (let row = 0; row < cells.length; row++)
    if (kindAt(cells, row) === "quantity" && unitAt(cells, row) === null) return true;
  return false;
}

const header = (column: RecordColumn): string =>
  headerWithUnit(column.name, hasBareNumbers(column) ? null : column.unit);

/**
 * The rows as they stand; records that were set aside in reading are none. setAside: rows (from 0) that the maker set aside, which stay,
 * with the reason in a column of its own.
 */
export function csvFromRecords({ columns, rowCount }: RecordTable, setAside: ReadonlyMap<number, string>): string {
  const own = setAside.size === 0 ? null : freeName("set aside", new Set(columns.map((column) => column.name)));
  return csvText([
    [...columns.map(header), ...(own === null ? [] : [own])],
    ...Array.from({ length: rowCount }, (_, row) => [
      ...columns.map(({ cells }) => rawAt(cells, row)),
      ...(own === null ? [] : [setAside.get(row) ?? ""]),
    ]),
  ]);
}

/** The maker's description, with how the exported file is to be read. */
export const descriptionOfRecords = (said: TableDescription | null): object => ({
  version: 1,
  ...said,
  read: { ...said?.read, ...csvReadBy },
});
