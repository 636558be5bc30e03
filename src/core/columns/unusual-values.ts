// Points out values far from what is usual: a comma that slipped, grams that were kilograms. Nothing is changed.
import type { UsualRange } from "../records/index.ts";
import type { Unit } from "../units/index.ts";
import {
  amountInWords,
  fromSi,
  numberInWords,
  sameDimension,
  toSi,
  unitFromCode,
  unitFromText,
} from "../units/index.ts";
import type { Column, QuantityColumn } from "./column.ts";
import { columnNotes } from "./column-notes.ts";

/** So many times beyond the end of the usual range is far: a slip of ten or of inches is seen, an odd piece is let be. */
const FAR = 3;

type Bounds = { readonly low: number; readonly high: number };

/** Outside these a value is far off, SI. On a temperature scale ratios mean nothing, so there the range is widened by its own width. */
function farBounds({ low, high }: UsualRange, unit: Unit): Bounds {
  if (unit.offset !== 0) return { low: toSi(2 * low - high, unit), high: toSi(2 * high - low, unit) };
  return { low: toSi(low > 0 ? low / FAR : -FAR * high, unit), high: toSi(FAR * high, unit) };
}

/** Rows (from 0) whose value is outside, in order. */
function rowsOutside({ values }: QuantityColumn, { low, high }: Bounds): number[] {
  const found: number[] = [];
  for (let row = 0; row < values.length; row++) {
    const value = values[row] ?? Number.NaN;
    if (value < low || value > high) found.push(row);
  }
  return found;
}

/** The remark on a column with values far from what is usual; null where there are none. pieces: what each record is called. */
export function unusualValues(column: Column, usual: UsualRange | undefined, pieces: readonly string[]): string | null {
  if (usual === undefined || column.kind !== "quantity") return null;
  const unit = usual.unit === undefined ? unitFromCode(column.unit) : unitFromText(usual.unit);
  if (!unit || !sameDimension(unit.dimension, column.dimension) || !(usual.low < usual.high)) return null;
  const [first, ...more] = rowsOutside(column, farBounds(usual, unit));
  if (first === undefined) return null;
  const shown = unitFromCode(column.unit);
  const inColumn = (si: number) => fromSi(si, shown);
  return columnNotes["far-from-usual"]({
    column: column.header,
    piece: pieces[first] ?? `row ${first + 1}`,
    value: amountInWords(inColumn(column.values[first] ?? Number.NaN), null, column.unit),
    more: more.length,
    low: numberInWords(inColumn(toSi(usual.low, unit)), null),
    high: amountInWords(inColumn(toSi(usual.high, unit)), null, column.unit),
  });
}
