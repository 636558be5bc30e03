import { type CellAmount, type Computed, failed, type Inputs } from "../../cell.ts";
import { cells } from "../../cells.ts";
import { amountFrom, amountOfColumns, amountsNamed } from "../../evaluated.ts";
import type { ValueSpec } from "./value-spec.ts";

/** One amount out of a formula. */
export function runValue(spec: ValueSpec, inputs: Inputs): Computed<CellAmount> {
  const amounts = amountsNamed(spec.amounts, spec.expression, inputs);
  if (!amounts.ok) return amounts;
  if (!spec.usesTable) return amountFrom(spec.expression, amounts.value);
  const slice = inputs.get(cells.slice(spec.key));
  if (!slice.ok) return failed();
  return amountOfColumns(spec.expression, spec.name, { ...slice.value, amounts: amounts.value });
}
