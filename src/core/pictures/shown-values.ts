// The values of a column as an axis shows them: in the unit of display, never in SI.
import type { PictureAxis } from "../base/index.ts";
import type { Column } from "../columns/index.ts";
import { fromSi, scaleFactor, unitFromCode } from "../units/index.ts";

export type ShownValues = {
  readonly axis: PictureAxis;
  /** Value of a row in the unit of display, or its label; null where it is missing. */
  readonly at: (row: number) => number | string | null;
  /** Standard uncertainty of a row in the unit of display; 0 where none is known. */
  readonly uncertaintyAt: (row: number) => number;
};

const words = (name: string) => name.replaceAll("_", " ");
const finiteOrNull = (value: number | undefined) => (value !== undefined && Number.isFinite(value) ? value : null);
const none = () => 0;

function ofNumbers(
  values: Float64Array,
  uncertainty: Float64Array | null,
  name: string,
  unitCode: string,
): ShownValues {
  const unit = unitFromCode(unitCode);
  return {
    axis: { label: words(name), unit: unitCode, kind: "number" },
    at: (row) => {
      const value = finiteOrNull(values[row]);
      return value === null ? null : finiteOrNull(fromSi(value, unit));
    },
    uncertaintyAt: uncertainty ? (row) => (finiteOrNull(uncertainty[row]) ?? 0) / scaleFactor(unitCode) : none,
  };
}

const ofCodes = (codes: ArrayLike<number>, names: readonly string[], name: string): ShownValues => ({
  axis: { label: words(name), unit: "1", kind: "label", order: names },
  at: (row) => names[codes[row] ?? -1] ?? null,
  uncertaintyAt: none,
});

const shownOf: { readonly [K in Column["kind"]]: (column: Extract<Column, { kind: K }>) => ShownValues } = {
  quantity: (column) => ofNumbers(column.values, column.uncertainty, column.name, column.unit),
  pitch: (column) => ofNumbers(column.frequencies, null, column.name, "Hz"),
  date: (column) => ({
    axis: { label: words(column.name), unit: "1", kind: "date" },
    at: (row) => finiteOrNull(column.days[row]),
    uncertaintyAt: none,
  }),
  label: (column) => ofCodes(column.codes, column.names, column.name),
  grade: (column) => ofCodes(column.codes, column.levels, column.name),
  "yes-no": (column) => ofCodes(column.values, ["no", "yes"], column.name),
  words: (column) => ({
    axis: { label: words(column.name), unit: "1", kind: "label" },
    at: (row) => column.texts[row] ?? null,
    uncertaintyAt: none,
  }),
};

/** How the values of a column are shown on an axis: numbers in its unit of display, labels and grades by name, dates in days. */
export function shownValues(column: Column): ShownValues {
  const shown = shownOf[column.kind] as (column: Column) => ShownValues;
  return shown(column);
}
