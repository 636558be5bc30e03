// The column an answer needs, out of the column that was named: a pitch is a frequency, a yes/no or a grade may group.

import { declined, type Outcome, succeeded } from "../../core/base/index.ts";
import type { Column, GradeColumn, LabelColumn, QuantityColumn } from "../../core/columns/index.ts";
import { unitFromCode } from "../../core/units/index.ts";

const kindInWords: { readonly [K in Column["kind"]]: string } = {
  quantity: "a quantity",
  label: "a label",
  grade: "a grade",
  date: "a date",
  pitch: "a pitch",
  words: "words",
  "yes-no": "a yes or no",
};

/** A quantity, or a pitch as the frequency it is; else a refusal that names the kind. */
export function quantityOf(column: Column): Outcome<QuantityColumn> {
  if (column.kind === "quantity") return succeeded(column);
  if (column.kind === "pitch") {
    const { name, header, origin, warnings, frequencies } = column;
    return succeeded({
      kind: "quantity",
      name,
      header,
      origin,
      warnings,
      values: frequencies,
      uncertainty: null,
      unit: "Hz",
      dimension: unitFromCode("Hz").dimension,
    });
  }
  return declined("wrong-kind", { column: column.name, found: kindInWords[column.kind], needed: "a quantity" });
}

/** A label to group by; grades, yes/no and short words are labels too. Null where the column cannot group. */
export function labelOf(column: Column): LabelColumn | null {
  if (column.kind === "label") return column;
  const { name, header, origin, warnings } = column;
  if (column.kind === "grade")
    return { kind: "label", name, header, origin, warnings, codes: column.codes, names: column.levels };
  if (column.kind === "yes-no")
    return {
      kind: "label",
      name,
      header,
      origin,
      warnings,
      codes: Int32Array.from(column.values),
      names: ["no", "yes"],
    };
  if (column.kind === "words") {
    const names = [...new Set(column.texts.filter((text) => text !== null))].sort((a, b) =>
      a < b ? -1 : a > b ? 1 : 0,
    );
    const place = new Map(names.map((text, code) => [text, code]));
    return {
      kind: "label",
      name,
      header,
      origin,
      warnings,
      codes: Int32Array.from(column.texts, (text) => (text === null ? -1 : (place.get(text) ?? -1))),
      names,
    };
  }
  return null;
}

/** A label, or the refusal that says what was found. */
export function neededLabel(column: Column): Outcome<LabelColumn> {
  const label = labelOf(column);
  return label
    ? succeeded(label)
    : declined("wrong-kind", { column: column.name, found: kindInWords[column.kind], needed: "a label" });
}

/** A quantity or grades. */
export function quantityOrGrade(column: Column): Outcome<QuantityColumn | GradeColumn> {
  return column.kind === "grade" ? succeeded(column) : quantityOf(column);
}

/** The helpers by the kind they give. */
export const columnKinds = { quantity: quantityOf, label: neededLabel, quantityOrGrade } as const;
