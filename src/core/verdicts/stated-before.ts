// Stated before seen: only instruments finished after the day a rule was stated are a test of it.
import type { ColumnTable } from "../columns/index.ts";

export type StatedSplit = {
  /** Rows finished after the rule was stated: 1; the test. */
  readonly after: Uint8Array;
  /** Rows finished on or before that day: the records the rule may have been made from. */
  readonly before: Uint8Array;
  /** Whether the table says when an instrument was finished, so that the split means something. */
  readonly dated: boolean;
};

/** Splits the rows by the table's `finished on` column. A row without a date counts as before: it cannot be shown to be a test. */
export function statedBefore(table: ColumnTable, statedDay: number | null, mask: Uint8Array | null): StatedSplit {
  const finished = table.finished === undefined ? undefined : table.columns.get(table.finished);
  const dated = finished?.kind === "date" && statedDay !== null;
  const after = new Uint8Array(table.rowCount);
  const before = new Uint8Array(table.rowCount);
  for (let row = 0; row < table.rowCount; row++) {
    if (mask && mask[row] !== 1) continue;
    const later =
      dated && finished?.kind === "date" && statedDay !== null && (finished.days[row] ?? Number.NaN) > statedDay;
    (later ? after : before)[row] = 1;
  }
  return { after, before, dated };
}
