// The errors of a rig: what it read less what it should have read, record by record, and who takes no part.
import type { RowRef, SetAside } from "../base/index.ts";
import type { ColumnTable, DateColumn, LabelColumn, QuantityColumn } from "../columns/index.ts";
import { leftOutRows } from "../columns/index.ts";

//   index      [ 0,     1,     3 ]        rows of the table that take part
//   reference  [ 0.010, 0.010, 0.200 ]    SI
//   error      [ 3e-5,  8e-5,  9e-5 ]     reading minus reference, SI
//   days       [ 19800, 19800, NaN ]      NaN where no date is known
export type RigErrors = {
  readonly index: Int32Array;
  readonly reference: Float64Array;
  readonly reading: Float64Array;
  readonly error: Float64Array;
  readonly days: Float64Array;
  readonly used: readonly RowRef[];
  readonly setAside: readonly SetAside[];
};

export type RigInput = {
  readonly table: ColumnTable;
  /** Name of the rig in sentences: "balance". */
  readonly name: string;
  readonly reading: QuantityColumn;
  readonly reference: QuantityColumn;
  readonly date?: DateColumn | null;
  /** Who read it; not used yet: `gauge-rr` and `iso5725` take it by name. */
  readonly operator?: LabelColumn | null;
  /** 1 where a record belongs to this rig; null for all. */
  readonly mask: Uint8Array | null;
};

/** Records with both a reading and a reference that are not left out. A record outside the mask is no part of the question at all. */
export function rigErrors({ table, reading, reference, date, mask }: RigInput): RigErrors {
  const used: RowRef[] = [];
  const index: number[] = [];
  const missing: SetAside[] = [];
  for (let i = 0; i < table.rowCount; i++) {
    const row = table.rows[i];
    if (row === undefined || table.leftOut.has(i) || (mask !== null && mask[i] !== 1)) continue;
    const known = Number.isFinite(reading.values[i]) && Number.isFinite(reference.values[i]);
    if (known) {
      index.push(i);
      used.push(row);
    } else missing.push({ row, why: "missing-value" });
  }
  const take = (values: Float64Array) => Float64Array.from(index, (i) => values[i] ?? Number.NaN);
  const [read, known] = [take(reading.values), take(reference.values)];
  return {
    index: Int32Array.from(index),
    reference: known,
    reading: read,
    error: read.map((value, i) => value - (known[i] ?? Number.NaN)),
    days: date ? take(date.days) : new Float64Array(index.length).fill(Number.NaN),
    used,
    setAside: [...leftOutRows(table), ...missing],
  };
}
