// `correct COLUMN by RIG`: the calibration found by a rig check, applied by date, its uncertainty carried on.
import { type Outcome, succeeded } from "../../core/base/index.ts";
import type { Column, ColumnTable, DateColumn, QuantityColumn } from "../../core/columns/index.ts";
import { calibrationFromRig } from "../../core/rig/index.ts";
import type { RigState } from "./cells.ts";
import { quantityOf } from "./quantity-of.ts";

/** The day of each record that its readings were taken on: the first date column that is not the finishing date. */
const daysOf = (table: ColumnTable): Float64Array | null => {
  const dates = [...table.columns.values()].filter((column): column is DateColumn => column.kind === "date");
  return (dates.find((column) => column.name !== table.finished) ?? dates[0])?.days ?? null;
};

/** The column with the rig's correction added and its uncertainty joined in squares; else why it cannot be corrected. */
export function correctedColumn(table: ColumnTable, column: Column, rig: RigState): Outcome<QuantityColumn> {
  const quantity = quantityOf(column);
  if (!quantity.ok) return quantity;
  const calibration = calibrationFromRig(rig.input);
  if (!calibration.ok) return calibration;
  const { correctionAt, uncertainty, scatter } = calibration.value;
  const days = daysOf(table);
  const [values, spread] = [Float64Array.from(quantity.value.values), new Float64Array(table.rowCount)];
  for (let row = 0; row < table.rowCount; row++) {
    const [reading, day] = [quantity.value.values[row] ?? Number.NaN, days?.[row] ?? Number.NaN];
    values[row] = reading + correctionAt(day, reading);
    const stated = quantity.value.uncertainty?.[row] ?? Number.NaN;
    spread[row] = Math.hypot(uncertainty(day, reading), Number.isNaN(stated) ? scatter : stated);
  }
  // What its readings add is joined in `spread` and stands as the column's own from here on.
  const { contributions: _, ...rest } = quantity.value;
  return succeeded({ ...rest, values, uncertainty: spread });
}
