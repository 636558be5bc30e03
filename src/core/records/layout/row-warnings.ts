// Rows that are too short, too long, or a repetition.
import type { ColumnHead } from "./column-heads.ts";
import { isEmptyField } from "./field-sort.ts";
import type { TableLayout } from "./table-layout.ts";

/** How many fields a record should have: those of the header, else the commonest number. */
function usualLength({ header, rows }: TableLayout): number {
  if (header) return header.fields.length;
  const counts = new Map<number, number>();
  for (const { fields } of rows) counts.set(fields.length, (counts.get(fields.length) ?? 0) + 1);
  let best = 0;
  for (const [length, count] of counts)
    if (count > (counts.get(best) ?? 0) || (count === counts.get(best) && length > best)) best = length;
  return best;
}

/** Codes by row (from 0). */
export function rowWarnings(layout: TableLayout, heads: readonly ColumnHead[]): { row: number; code: string }[] {
  const length = usualLength(layout);
  const lastOwn = heads.reduce((last, { place }) => (place < length && place > last ? place : last), -1);
  const seen = new Set<string>();
  return layout.rows.flatMap(({ fields }, row) => {
    const key = heads.map(({ place }) => fields[place] ?? "").join("\u0000\u0001");
    const codes: string[] = [];
    if (fields.length <= lastOwn) codes.push("short-row");
    if (fields.some((field, at) => at >= length && !isEmptyField(field))) codes.push("long-row");
    if (seen.has(key)) codes.push("duplicate-row");
    seen.add(key);
    return codes.map((code) => ({ row, code }));
  });
}
