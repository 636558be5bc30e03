import type { Column } from "../../../../core/columns/index.ts";
import { type Computed, failed, type Inputs } from "../../cell.ts";
import { cells } from "../../cells.ts";
import { amountsNamed, columnFrom, columnsNamed } from "../../evaluated.ts";
import type { ColumnSpec } from "./column-spec.ts";

/** One formula over its table; a name that is already a column of the file is taken. */
export function runColumns(spec: ColumnSpec, inputs: Inputs): Computed<Column> {
  const table = inputs.get(cells.table(spec.table));
  if (!table.ok) return failed({ code: "waits-for", facts: { name: spec.table }, span: null });
  if (table.value.columns.has(spec.name))
    return failed({ code: "name-taken", facts: { name: spec.name }, span: { from: 0, to: spec.name.length } });
  const formulas = columnsNamed(spec.table, spec.formulas, spec.expression, inputs);
  if (!formulas.ok) return formulas;
  const amounts = amountsNamed(spec.amounts, spec.expression, inputs);
  if (!amounts.ok) return amounts;
  return columnFrom(spec.expression, spec.name, spec.text, {
    table: table.value,
    formulas: formulas.value,
    amounts: amounts.value,
  });
}
