import { declined, type Outcome, succeeded } from "../../core/base/index.ts";
import type { Column, GradeColumn, QuantityColumn } from "../../core/columns/index.ts";
import { unitFromCode } from "../../core/units/index.ts";
import { kindInWords } from "./kind-in-words.ts";

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

/** A quantity or grades. */
export function quantityOrGrade(column: Column): Outcome<QuantityColumn | GradeColumn> {
  return column.kind === "grade" ? succeeded(column) : quantityOf(column);
}
