import { heading } from "../readers/heading.ts";
import { csvReadBy, csvText } from "./csv-text.ts";
import type { ExportedColumn, ExportedTable, ExportedValue } from "./exported-table.ts";
import { headerWithUnit } from "./header-with-unit.ts";

const cell = (value: ExportedValue): string =>
  value === null ? "" : value === true ? "yes" : value === false ? "no" : String(value);
const header = ({ name, unit }: ExportedColumn): string => headerWithUnit(name, unit);

/** Values as CSV, the unit of each column in its header; missing is empty. */
export const csvFromTable = ({ columns, rowCount }: ExportedTable): string =>
  csvText([
    columns.map(header),
    ...Array.from({ length: rowCount }, (_, row) => columns.map(({ values }) => cell(values[row] ?? null))),
  ]);

const kindOf = {
  quantity: "quantity",
  uncertainty: "quantity",
  "yes-no": "yes-no",
  date: "date",
  pitch: "pitch",
} as const;

/** What the header cannot say: name, kind and unit of each column, and the formula that made it. */
export const descriptionOfTable = ({ name, columns }: ExportedTable): object => ({
  version: 1,
  title: name,
  columns: Object.fromEntries(
    columns.map((column) => [
      heading(header(column)).name,
      {
        name: column.name,
        kind: column.kind in kindOf ? kindOf[column.kind as keyof typeof kindOf] : "text",
        ...(column.unit === null ? {} : { unit: column.unit }),
        ...(column.formula === undefined ? {} : { meaning: column.formula }),
      },
    ]),
  ),
  read: { ...csvReadBy, decimal: "." },
});
