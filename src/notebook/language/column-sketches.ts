// A column in a few facts: what a first question needs to know of it, and nothing of its cells.
import type { Column, ColumnTable } from "../../core/columns/index.ts";
import type { Dimension } from "../../core/units/index.ts";

/**
 * `name`: in sentences; `header`: as the maker wrote it. `filled`: share of the rows that have a value. `values`: number of different
 * values. `groups`: labels that at least two rows have. `dimension`: null if it is no quantity.
 */
export type ColumnSketch = {
  readonly name: string;
  readonly header: string;
  readonly kind: Column["kind"];
  readonly dimension: Dimension | null;
  readonly filled: number;
  readonly values: number;
  readonly groups: number;
};

type Value = number | string | null;

/** The value at a row as something that can be counted; null where it is missing. */
const countable: { readonly [K in Column["kind"]]: (column: Extract<Column, { kind: K }>, row: number) => Value } = {
  quantity: ({ values }, row) => values[row] ?? null,
  label: ({ codes }, row) => codes[row] ?? null,
  grade: ({ codes }, row) => codes[row] ?? null,
  date: ({ days }, row) => days[row] ?? null,
  pitch: ({ frequencies }, row) => frequencies[row] ?? null,
  words: ({ texts }, row) => texts[row] ?? null,
  "yes-no": ({ values }, row) => values[row] ?? null,
};
const CODED: ReadonlySet<Column["kind"]> = new Set(["label", "grade", "yes-no"]);

function sketch(column: Column, rowCount: number): ColumnSketch {
  const counts = new Map<number | string, number>();
  const read = countable[column.kind] as (column: Column, row: number) => Value;
  let filled = 0;
  for (let row = 0; row < rowCount; row++) {
    const value = read(column, row);
    if (value === null || Number.isNaN(value) || (CODED.has(column.kind) && value === -1)) continue;
    filled++;
    counts.set(value, (counts.get(value) ?? 0) + 1);
  }
  return {
    name: column.name,
    header: column.header,
    kind: column.kind,
    dimension: column.kind === "quantity" ? column.dimension : null,
    filled: rowCount === 0 ? 0 : filled / rowCount,
    values: counts.size,
    groups: column.kind === "label" ? [...counts.values()].filter((count) => count > 1).length : 0,
  };
}

/** Columns whose mean stands in the table as a column of its own: the mean is what to ask about. */
const readingsOf = (columns: readonly Column[]): ReadonlySet<string> =>
  new Set(columns.flatMap(({ origin }) => (origin.from === "formula" && origin.readings ? origin.parents : [])));

/** Every column of a table in short, in the file's order; of repeated readings their mean alone. */
export function columnSketches(table: ColumnTable): readonly ColumnSketch[] {
  const columns = [...table.columns.values()];
  const readings = readingsOf(columns);
  return columns.filter(({ name }) => !readings.has(name)).map((column) => sketch(column, table.rowCount));
}
