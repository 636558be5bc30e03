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

const AT_A_TIME = 1000;

function* printedList(name: string, list: readonly unknown[]): Iterable<string> {
  yield `${JSON.stringify(name)}:[`;
  for (let at = 0; at < list.length; at += AT_A_TIME)
    yield `${at === 0 ? "" : ","}${JSON.stringify(list.slice(at, at + AT_A_TIME)).slice(1, -1)}`;
  yield "]";
}

/** A result of reading as JSON of its published shape, a piece at a time: a large table is never in memory as one text. `more`: members after it. */
export const printedReadResult = (result: ReadResult, more: Readonly<Record<string, unknown>> = {}): Iterable<string> =>
  pieces(result, more);

function* pieces(
  { file, options, tables, setAside, warnings }: ReadResult,
  more: Readonly<Record<string, unknown>>,
): Iterable<string> {
  yield `{${pairs({ file, ...(options ? { options } : {}) })},"tables":[`;
  for (const [at, table] of tables.entries()) {
    if (at > 0) yield ",\n";
    yield* printedTable(table);
  }
  yield "],\n";
  yield* printedList("setAside", setAside);
  yield ",\n";
  yield* printedList("warnings", warnings);
  for (const [name, value] of Object.entries(more)) yield `,\n${pairs({ [name]: value })}`;
  yield "}";
}
