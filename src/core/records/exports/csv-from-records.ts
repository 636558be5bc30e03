// The raw cells of a record table as CSV: what is read from it is what was read before.
import { kindAt, rawAt, unitAt } from "../cells.ts";
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

/** The rows as they stood; records that were set aside in reading are none. */
export const csvFromRecords = ({ columns, rowCount }: RecordTable): string =>
  csvText([
    columns.map(header),
    ...Array.from({ length: rowCount }, (_, row) => columns.map(({ cells }) => rawAt(cells, row))),
  ]);

/** The maker's description, with how the exported file is to be read. */
export const descriptionOfRecords = (said: TableDescription | null): object => ({
  version: 1,
  ...said,
  read: { ...said?.read, ...csvReadBy },
});
