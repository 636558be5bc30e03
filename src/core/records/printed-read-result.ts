import { readingAt } from "./cells.ts";
import type { ReadResult, RecordTable } from "./read-result.ts";

const pairs = (parts: Readonly<Record<string, unknown>>): string => JSON.stringify(parts).slice(1, -1);

function* printedTable({ name, columns, rowCount }: RecordTable): Iterable<string> {
  const heads = columns.map(({ name, unit, kind }) => ({ name, unit, kind }));
  yield `{${pairs({ name, columns: heads })},"rows":[`;
  for (let row = 0; row < rowCount; row++)
    yield `${row === 0 ? "" : ","}\n${JSON.stringify(columns.map(({ cells }) => readingAt(cells, row)))}`;
  yield "]}";
}

/** A result of reading as JSON of its published shape, a piece at a time: a large table is never in memory as one text. */
export function printedReadResult(result: ReadResult): Iterable<string> {
  return pieces(result);
}

function* pieces({ file, options, tables, setAside, warnings }: ReadResult): Iterable<string> {
  yield `{${pairs({ file, ...(options ? { options } : {}) })},"tables":[`;
  for (const [at, table] of tables.entries()) {
    if (at > 0) yield ",\n";
    yield* printedTable(table);
  }
  yield `],\n${pairs({ setAside, warnings })}}`;
}
