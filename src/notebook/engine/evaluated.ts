// The engine's one meeting place with formulas: what is in reach of an expression, and what it comes to.
import { type Column, type ColumnTable, withColumn } from "../../core/columns/index.ts";
import {
  checkExpression,
  columnFromExpression,
  type Expression,
  type FormulaProblem,
  maskFromExpression,
  scopeFromTable,
  type TypedExpression,
  typeInWords,
  valueFromExpression,
} from "../../core/formula/index.ts";
import { type CellAmount, type Computed, computed, failed, type Inputs, type LocalProblem, waitsFor } from "./cell.ts";
import { cells } from "./cells.ts";
import { expressionNames } from "./expression-names.ts";

/** What an expression may name. */
export type InReach = {
  readonly table: ColumnTable;
  readonly formulas: readonly Column[];
  readonly amounts: ReadonlyMap<string, CellAmount>;
};

const placeOf = (name: string, expression: Expression) =>
  expressionNames(expression).find((each) => each.name === name) ?? null;

/** The values and dials that an expression names, or what it waits for. */
export function amountsNamed(
  names: readonly string[],
  expression: Expression,
  inputs: Inputs,
): Computed<ReadonlyMap<string, CellAmount>> {
  const amounts = new Map<string, CellAmount>();
  const waiting: LocalProblem[] = [];
  for (const name of names) {
    const amount = inputs.get(cells.amount(name));
    if (amount.ok) amounts.set(name, amount.value);
    else waiting.push(waitsFor(name, placeOf(name, expression)));
  }
  return waiting.length > 0 ? failed(...waiting) : computed(amounts);
}

/** The formula columns that an expression names, or what it waits for. */
export function columnsNamed(
  table: string,
  names: readonly string[],
  expression: Expression,
  inputs: Inputs,
): Computed<readonly Column[]> {
  const columns: Column[] = [];
  const waiting: LocalProblem[] = [];
  for (const name of names) {
    const column = inputs.get(cells.column(table, name));
    if (column.ok) columns.push(column.value);
    else waiting.push(waitsFor(name, placeOf(name, expression)));
  }
  return waiting.length > 0 ? failed(...waiting) : computed(columns);
}

const localProblem = ({ code, facts, span, suggestion }: FormulaProblem): LocalProblem => ({
  code,
  facts,
  span,
  ...(suggestion === undefined ? {} : { suggestion }),
});

const withFormulas = ({ table, formulas }: InReach): ColumnTable =>
  formulas.reduce<ColumnTable>(
    (all, column) => (all.columns.get(column.name) === column ? all : withColumn(all, column)),
    table,
  );

function typed(
  expression: Expression,
  table: ColumnTable | null,
  amounts: InReach["amounts"],
): Computed<TypedExpression> {
  const { typed: found, problems } = checkExpression(expression, scopeFromTable(table, amounts));
  return found === null || problems.length > 0 ? failed(...problems.map(localProblem)) : computed(found);
}

/** The column of a formula; a plain name under its own name is that column itself. */
export function columnFrom(expression: Expression, name: string, text: string, reach: InReach): Computed<Column> {
  const table = withFormulas(reach);
  const named = expression.kind === "name" && expression.name === name ? table.columns.get(name) : undefined;
  if (named) return computed(named);
  const checked = typed(expression, table, reach.amounts);
  return checked.ok ? computed(columnFromExpression(checked.value, name, text, table, reach.amounts)) : checked;
}

/** Rows for which a condition holds: 1 true, 0 false or not known. */
export function maskFrom(expression: Expression, reach: InReach): Computed<Uint8Array> {
  const table = withFormulas(reach);
  const checked = typed(expression, table, reach.amounts);
  if (!checked.ok) return checked;
  if (checked.value.type.kind !== "yes-no")
    return failed({
      code: "wrong-kind",
      facts: { found: typeInWords(checked.value.type), needed: "a condition" },
      span: expression,
    });
  return computed(maskFromExpression(checked.value, table, reach.amounts));
}

/** One amount out of a formula that names no column. */
export function amountFrom(expression: Expression, amounts: InReach["amounts"]): Computed<CellAmount> {
  const checked = typed(expression, null, amounts);
  if (!checked.ok) return checked;
  if (checked.value.type.kind !== "quantity")
    return failed({
      code: "wrong-kind",
      facts: { found: typeInWords(checked.value.type), needed: "an amount" },
      span: expression,
    });
  const { value, unit, uncertainty, contributions } = valueFromExpression(checked.value, amounts);
  return computed({ value, unit, uncertainty, ...(contributions ? { contributions } : {}) });
}

/** One amount out of a formula over columns (`mean of density`): it must be the same for every record. */
export function amountOfColumns(expression: Expression, name: string, reach: InReach): Computed<CellAmount> {
  const column = columnFrom(expression, `value ${name}`, name, reach);
  if (!column.ok) return column;
  if (column.value.kind !== "quantity")
    return failed({ code: "wrong-kind", facts: { found: "a column", needed: "an amount" }, span: expression });
  const { values, uncertainty, unit } = column.value;
  const first = values.findIndex((value) => !Number.isNaN(value));
  if (values.some((value) => !Number.isNaN(value) && value !== values[first]))
    return failed({ code: "wrong-kind", facts: { found: "a column", needed: "an amount" }, span: expression });
  return computed({
    value: first < 0 ? null : (values[first] ?? null),
    unit,
    uncertainty: first < 0 ? null : (uncertainty?.[first] ?? null),
  });
}

/** What the entries evaluate formulas with. */
export const evaluated = { columnFrom, maskFrom, amountFrom, amountOfColumns } as const;
