import type { ColumnTable } from "../columns/index.ts";
import type { Amounts } from "./amount.ts";
import { formulaInputs } from "./formula-inputs.ts";
import { runFormula } from "./run-formula.ts";
import type { TypedExpression } from "./typed-expression.ts";

/** A checked condition at each row: 1 true, 0 false, -1 where it cannot be known because something is missing. */
export const conditionFromExpression = (typed: TypedExpression, table: ColumnTable, values: Amounts): Int8Array =>
  Int8Array.from(runFormula(typed, formulaInputs(table, values), "condition").numbers, (value) =>
    Number.isNaN(value) ? -1 : value,
  );

/** The rows for which a checked condition holds: 1 true, 0 false or not known. */
export const maskFromExpression = (typed: TypedExpression, table: ColumnTable, values: Amounts): Uint8Array =>
  Uint8Array.from(conditionFromExpression(typed, table, values), (value) => (value === 1 ? 1 : 0));
