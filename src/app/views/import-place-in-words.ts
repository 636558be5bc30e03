import type { ImportReading, ImportWarning } from "../../core/records/index.ts";

/** "row 3, Mass", "Mass", "the whole file"; with the table's name where there are several. */
export function importPlaceInWords({ tables }: ImportReading, { table, row, col }: ImportWarning): string {
  const of = tables[table - 1];
  const column = col === undefined ? "" : (of?.columns[col - 1]?.name ?? `column ${col}`);
  const place = [row === undefined ? "" : `row ${row}`, column].filter((part) => part !== "").join(", ");
  if (place === "") return "the whole file";
  return tables.length > 1 ? `${of?.name ?? `table ${table}`}, ${place}` : place;
}
