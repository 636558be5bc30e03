// Rows that are too short, too long, or a repetition.
import { isEmptyAt } from "../source/is-empty-field.ts";
import { widthOf } from "../source/raw-records.ts";
import type { ColumnHead } from "./column-heads.ts";
import type { TableLayout } from "./table-layout.ts";

/** How many fields a record should have: those of the header, else the commonest number. */
function usualLength({ records, header, rows }: TableLayout): number {
  if (header !== null) return widthOf(records, header);
  const counts = new Map<number, number>();
  for (const row of rows) counts.set(widthOf(records, row), (counts.get(widthOf(records, row)) ?? 0) + 1);
  let best = 0;
  for (const [length, count] of counts)
    if (count > (counts.get(best) ?? 0) || (count === counts.get(best) && length > best)) best = length;
  return best;
}

/** Codes by row (from 0). `repeated`: rows that repeat an earlier one. */
export function rowWarnings(
  layout: TableLayout,
  heads: readonly ColumnHead[],
  repeated: ReadonlySet<number>,
): { row: number; code: string }[] {
  const { records, rows } = layout;
  const length = usualLength(layout);
  const lastOwn = heads.reduce((last, { place }) => (place < length && place > last ? place : last), -1);
  const found: { row: number; code: string }[] = [];
  for (let row = 0; row < rows.length; row++) {
    const record = rows[row] ?? 0;
    const first = records.firsts[record] ?? 0;
    const width = widthOf(records, record);
    if (width <= lastOwn) found.push({ row, code: "short-row" });
    for (let place = length; place < width; place++)
      if (!isEmptyAt(records, first + place)) {
        found.push({ row, code: "long-row" });
        break;
      }
    if (repeated.has(row)) found.push({ row, code: "duplicate-row" });
  }
  return found;
}
