// A table row by row, as tests like to see it.
import { type Reading, type RecordTable, readingAt } from "../../src/core/records/index.ts";

/** Every row as its cells. */
export const rowsOf = ({ columns, rowCount }: RecordTable): Reading[][] =>
  Array.from({ length: rowCount }, (_, row) => columns.map(({ cells }) => readingAt(cells, row)));
