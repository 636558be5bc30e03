// A column made by formula.
import { Defect } from "../base/index.ts";
import type { Column, ColumnOrigin, ColumnTable } from "../columns/index.ts";
import { labelsFromTexts } from "../columns/index.ts";
import type { Amounts } from "./amount.ts";
import { combinedUncertainty } from "./combined-uncertainty.ts";
import { dateText } from "./date-text.ts";
import { formulaInputs } from "./formula-inputs.ts";
import { runFormula } from "./run-formula.ts";
import type { TypedExpression } from "./typed-expression.ts";

/** The measured columns that some columns rest on in the end, sorted: a computed column's own roots, a measured column itself. */
function rootsOf(names: readonly string[], table: ColumnTable): readonly string[] {
  const roots = new Set<string>();
  for (const name of names) {
    const origin = table.columns.get(name)?.origin;
    for (const root of origin?.from === "formula" ? origin.roots : [name]) roots.add(root);
  }
  return [...roots].sort();
}

/** What tells the groups apart of each mean, sum and so on in a formula: a column, or null where it is none or more than a column. */
function gathered({ steps }: TypedExpression): readonly (string | null)[] {
  const found = steps.flatMap((step) => {
    if (step.does !== "group") return [];
    const [only, ...more] = step.by?.steps ?? [];
    const by = only?.does === "column" && more.length === 0 ? only.name : null;
    return [by, ...gathered(step.of), ...(step.by ? gathered(step.by) : [])];
  });
  return [...new Set(found)];
}

/**
 * The column of a checked formula over a table. name: what it is called; formula: its text; values: the notebook's values and dials in SI.
 * Missing in, missing out; what is not finite is missing. Each row's standard uncertainty is propagated to first order from the measured
 * columns, one that enters several times (also through other formula columns) counted once with its whole sensitivity.
 */
export function columnFromExpression(
  typed: TypedExpression,
  name: string,
  formula: string,
  table: ColumnTable,
  values: Amounts,
): Column {
  const gathers = gathered(typed);
  const origin: ColumnOrigin = {
    from: "formula",
    formula,
    parents: typed.columns,
    roots: rootsOf(typed.columns, table),
    ...(gathers.length > 0 ? { gathers } : {}),
  };
  const parts = { name, header: name, origin, warnings: 0 };
  const [only] = typed.steps;
  const copied = typed.steps.length === 1 && only?.does === "column" ? table.columns.get(only.name) : undefined;
  if (copied && copied.kind !== "quantity" && copied.kind !== "pitch") return { ...copied, ...parts };
  const inputs = formulaInputs(table, values);
  const { numbers, errors } = runFormula(typed, inputs, name);
  const { type } = typed;
  switch (type.kind) {
    case "quantity":
      return {
        ...parts,
        kind: "quantity",
        values: numbers,
        uncertainty: combinedUncertainty(numbers, errors),
        unit: typed.unit,
        dimension: type.dimension,
        ...(errors.size > 0 ? { contributions: errors } : {}),
      };
    case "yes-no":
      return {
        ...parts,
        kind: "yes-no",
        values: Int8Array.from(numbers, (value) => (Number.isNaN(value) ? -1 : value)),
      };
    case "grade":
      return {
        ...parts,
        kind: "grade",
        levels: type.levels,
        codes: Int32Array.from(numbers, (value) => (Number.isNaN(value) ? -1 : value)),
      };
    case "text":
      return {
        ...parts,
        kind: "label",
        ...labelsFromTexts(Array.from(numbers, (code) => (Number.isNaN(code) ? null : inputs.textOfCode(code)))),
      };
    case "date":
      return { ...parts, kind: "date", days: numbers, texts: Array.from(numbers, dateText) };
    case "missing":
      return { ...parts, kind: "label", codes: new Int32Array(table.rowCount).fill(-1), names: [] };
    default:
      throw new Defect("a formula of no kind");
  }
}
