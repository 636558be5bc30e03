// Whether a table holds several readings of one thing, to be asked about once on import. A guess that is asked, never acted upon.
import type { RecordTable, TableDescription } from "../records/index.ts";
import { readingsInColumns } from "./readings-in-columns.ts";
import { readingsInRows } from "./readings-in-rows.ts";

/** `columns`: headers of the readings, or of the column that names the piece. `description`: what to remember when the maker says yes. */
export type RepeatQuestion = {
  readonly code: "readings-in-columns" | "readings-in-rows";
  readonly sentence: string;
  readonly columns: readonly string[];
  readonly description: Pick<TableDescription, "repeats" | "oneRowPer">;
};

/** The questions to ask the maker of a table that has just been read; none where nothing looks repeated. */
export function repeatedReadings(table: RecordTable): readonly RepeatQuestion[] {
  const sets = readingsInColumns(table).map(
    ({ name, columns }): RepeatQuestion => ({
      code: "readings-in-columns",
      sentence: `${columns.join(", ")} look like readings of one thing. Shall their mean be a column called ${name}, with its standard error as uncertainty?`,
      columns,
      description: { repeats: [{ name, columns }] },
    }),
  );
  const rows = readingsInRows(table);
  if (!rows) return sets;
  const { column, repeated, pieces } = rows;
  return [
    ...sets,
    {
      code: "readings-in-rows",
      sentence: `${repeated} of ${pieces} entries of ${column} stand on several rows. Are those rows readings of one piece, to become one row with their mean?`,
      columns: [column],
      description: { oneRowPer: column },
    },
  ];
}
