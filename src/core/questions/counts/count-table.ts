import { declined, type Outcome, succeeded } from "../../base/index.ts";

/** The largest count that a cell may hold; sums of such counts are exact. */
export const LARGEST_COUNT = 1e9;

export const isCount = (value: unknown): value is number =>
  typeof value === "number" && Number.isInteger(value) && value >= 0 && value <= LARGEST_COUNT;

const list = (value: unknown): readonly unknown[] | null =>
  Array.isArray(value) ? value : value instanceof Float64Array ? [...value] : null;

/**
 * A table of counts as a run gives it: rows of one length, or a record of such rows by name. Declines what is no table of whole numbers from 0 to
 * 1e9, one that has fewer than two rows or columns, and one that counts nothing.
 */
export function countTable(given: unknown, name = "table"): Outcome<readonly (readonly number[])[]> {
  const rows = list(given) ?? (typeof given === "object" && given !== null ? Object.values(given) : []);
  const table: number[][] = [];
  for (const row of rows) {
    const cells = list(row);
    if (!cells) return declined("out-of-domain", { name, needed: "rows of counts, each row a list" });
    if (!cells.every(isCount))
      return declined("out-of-domain", { name, needed: "counts: whole numbers from 0 to 1,000,000,000 in every cell" });
    table.push([...cells]);
  }
  const columns = table[0]?.length ?? 0;
  if (table.length < 2 || columns < 2 || table.some((row) => row.length !== columns))
    return declined("out-of-domain", { name, needed: "at least two rows and two columns, rows of one length" });
  if (table.every((row) => row.every((count) => count === 0))) return declined("too-few-records", { have: 0, need: 1 });
  return succeeded(table);
}

/** The table without rows and columns that count nothing. */
export function withoutEmptyMargins(table: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const rows = table.filter((row) => row.some((count) => count > 0));
  return rows.map((row) => row.filter((_, at) => rows.some((other) => (other[at] ?? 0) > 0)));
}
