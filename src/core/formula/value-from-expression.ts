import { dimensionless } from "../units/index.ts";
import type { Amount, Amounts } from "./amount.ts";
import { formulaInputs } from "./formula-inputs.ts";
import { runFormula } from "./run-formula.ts";
import type { TypedExpression } from "./typed-expression.ts";

/** The value of a checked formula of values alone, with its standard uncertainty (null if no part has one). A condition is 1 or 0. */
export function valueFromExpression(typed: TypedExpression, values: Amounts, name = "value"): Amount {
  const { numbers, errors } = runFormula(typed, formulaInputs(null, values), name);
  const value = numbers[0] as number;
  const contributions = new Map([...errors].map(([source, parts]) => [source, parts.values[0] as number]));
  const uncertainty = Math.sqrt([...contributions.values()].reduce((sum, part) => sum + part * part, 0));
  const known = Number.isFinite(value);
  return {
    value: known ? value : null,
    dimension: typed.type.kind === "quantity" ? typed.type.dimension : dimensionless,
    unit: typed.unit,
    uncertainty: known && contributions.size > 0 && Number.isFinite(uncertainty) ? uncertainty : null,
    ...(contributions.size > 0 ? { contributions } : {}),
  };
}
