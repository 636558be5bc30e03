// The columns of a notebook's table as plain values for other tools, each in the unit in which it is shown.
import type { ExportedColumn, ExportedTable } from "../records/index.ts";
import { fromSi, toSi, type Unit, unitFromCode } from "../units/index.ts";
import type { Column, QuantityColumn } from "./column.ts";
import { freeName } from "./column-name.ts";
import type { ColumnTable } from "./column-table.ts";

type Made = Omit<ExportedColumn, "name" | "kind"> & { readonly kind?: "uncertainty"; readonly after?: string };

/** The value in the unit with the fewest digits that still mean the same SI value: 3.97 mm, not 3.9700000000000006. */
function inUnit(si: number, unit: Unit): number {
  const value = fromSi(si, unit);
  for (const digits of [10, 12, 15]) {
    const short = Number(value.toPrecision(digits));
    if (toSi(short, unit) === si) return short;
  }
  return value;
}

const numbers = (values: Float64Array, from: (si: number) => number): (number | null)[] =>
  Array.from(values, (si) => (Number.isFinite(si) ? from(si) : null));

/** To twelve digits: nobody knows more of an uncertainty. A difference on a temperature scale is in kelvin. */
function uncertaintyOf({ uncertainty, unit }: QuantityColumn): Made[] {
  if (uncertainty === null || !uncertainty.some((each) => each > 0)) return [];
  const own = unitFromCode(unitFromCode(unit).offset === 0 ? unit : "K");
  const values = numbers(uncertainty, (si) => Number(fromSi(si, own).toPrecision(12)));
  return [{ kind: "uncertainty", after: "_uncertainty", holds: "numbers", unit: own.code, values }];
}

const texts = (values: readonly (string | null)[]): Made => ({ holds: "texts", unit: null, values });
const named = (codes: Int32Array, names: readonly string[]): Made =>
  texts(Array.from(codes, (code) => names[code] ?? null));

/** What each kind of column becomes. A pitch is what was written, and beside it its frequency. */
const made: { readonly [K in Column["kind"]]: (column: Extract<Column, { kind: K }>) => readonly Made[] } = {
  quantity: (column) => {
    const unit = unitFromCode(column.unit);
    const values = numbers(column.values, (si) => inUnit(si, unit));
    return [{ holds: "numbers", unit: unit.code === "1" ? null : unit.code, values }, ...uncertaintyOf(column)];
  },
  label: ({ codes, names }) => [named(codes, names)],
  grade: ({ codes, levels }) => [named(codes, levels)],
  date: (column) => [texts(column.texts)],
  words: (column) => [texts(column.texts)],
  pitch: (column) => [
    texts(column.texts),
    { after: "_frequency", holds: "numbers", unit: "Hz", values: numbers(column.frequencies, (hz) => hz) },
  ],
  "yes-no": ({ values }) => [
    { holds: "truths", unit: null, values: Array.from(values, (value) => (value < 0 ? null : value === 1)) },
  ],
};

/** All rows and columns, formula columns with their formulas. Rows that are left out stay, with the reason in a column of its own. */
export function exportedFromColumns({ name, rowCount, columns, leftOut }: ColumnTable): ExportedTable {
  const exported = new Map<string, ExportedColumn>();
  const taken = { has: (each: string) => exported.has(each) || columns.has(each) };
  for (const column of columns.values())
    for (const { after, kind, ...rest } of made[column.kind](column as never)) {
      const own = after === undefined ? column.name : freeName(column.name + after, taken);
      const formula = after === undefined && column.origin.from === "formula" ? { formula: column.origin.formula } : {};
      exported.set(own, {
        name: own,
        kind: kind ?? (after === undefined ? column.kind : "quantity"),
        ...rest,
        ...formula,
      });
    }
  if (leftOut.size > 0) {
    const own = freeName("left_out", taken);
    const values = Array.from({ length: rowCount }, (_, row) => leftOut.get(row) ?? null);
    exported.set(own, { name: own, kind: "left-out", holds: "texts", unit: null, values });
  }
  return { name, rowCount, columns: [...exported.values()] };
}
