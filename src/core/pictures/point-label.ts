// The words that name a point: the piece first, then its values with units, then its group.
import { amountInWords } from "../units/index.ts";
import type { ShownValues } from "./shown-values.ts";

const DAY = 86_400_000;
/** Days since 1970-01-01 as year-month-day. */
const dateInWords = (days: number) => new Date(Math.round(days) * DAY).toISOString().slice(0, 10);

function valueInWords(shown: ShownValues, row: number): string | null {
  const value = shown.at(row);
  if (value === null || typeof value === "string") return value;
  if (shown.axis.kind === "date") return dateInWords(value);
  return amountInWords(value, shown.uncertaintyAt(row) || null, shown.axis.unit);
}

/** "B-07: final thickness 2.31 mm, stiffness along 11.2 GPa (cedar)". Values that are missing are left out. */
export function pointLabel(piece: string, row: number, shown: readonly ShownValues[], group: string | null): string {
  const values = shown.flatMap((column) => {
    const value = valueInWords(column, row);
    return value === null ? [] : [`${column.axis.label} ${value}`];
  });
  return `${piece}: ${values.join(", ")}${group === null ? "" : ` (${group})`}`;
}
