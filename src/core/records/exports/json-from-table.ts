import type { ExportedTable } from "./exported-table.ts";

/** A table as JSON of data-schema/exported-table.schema.json: columns with their units, then one object a record. */
export function jsonFromTable({ name, columns, rowCount }: ExportedTable): string {
  const heads = columns.map(({ name, kind, unit, formula }) => ({ name, kind, unit, ...(formula ? { formula } : {}) }));
  const records = Array.from({ length: rowCount }, (_, row) =>
    JSON.stringify(Object.fromEntries(columns.map(({ name, values }) => [name, values[row] ?? null]))),
  );
  const start = JSON.stringify({ version: 1, name, columns: heads }).slice(0, -1);
  return `${start},"records":[${records.map((record) => `\n${record}`).join(",")}\n]}\n`;
}
