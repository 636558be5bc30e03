// Formulas written as data, and small tables to compute them over.
import type { Column, ColumnTable } from "../../../src/core/columns/index.ts";
import { withColumn } from "../../../src/core/columns/index.ts";
import type { Amounts, BinaryOperator, Expression } from "../../../src/core/formula/index.ts";
import {
  checkExpression,
  columnFromExpression,
  printExpression,
  scopeFromTable,
} from "../../../src/core/formula/index.ts";
import { scaleFactor, unitFromCode } from "../../../src/core/units/index.ts";

const here = { from: 0, to: 0 };
export const amount = (value: number, unit: string | null = null, uncertainty?: number): Expression => ({
  ...here,
  kind: "number",
  value,
  unit,
  ...(uncertainty === undefined ? {} : { uncertainty }),
});
export const name = (text: string): Expression => ({ ...here, kind: "name", name: text });
export const text = (value: string): Expression => ({ ...here, kind: "text", value });
export const day = (value: string): Expression => ({ ...here, kind: "date", value });
export const missing: Expression = { ...here, kind: "missing" };
export const call = (id: string, ...list: readonly Expression[]): Expression => ({
  ...here,
  kind: "call",
  name: id,
  nameSpan: here,
  arguments: list,
});
export const group = (id: string, of: Expression, by: Expression | null = null): Expression => ({
  ...here,
  kind: "group",
  name: id,
  nameSpan: here,
  of,
  by,
});
export const two = (left: Expression, operator: BinaryOperator, right: Expression): Expression => ({
  ...here,
  kind: "binary",
  operator,
  operatorSpan: { from: 7, to: 8 },
  left,
  right,
});
export const choose = (condition: Expression, then: Expression, otherwise: Expression): Expression => ({
  ...here,
  kind: "if",
  condition,
  then,
  otherwise,
});
export const shownIn = (operand: Expression, unit: string): Expression => ({
  ...here,
  kind: "in",
  operand,
  unit,
  unitSpan: { from: 3, to: 5 },
});
export const not = (operand: Expression): Expression => ({ ...here, kind: "unary", operator: "not", operand });
export const minus = (operand: Expression): Expression => ({ ...here, kind: "unary", operator: "-", operand });

const parts = (title: string) => ({
  name: title,
  header: title,
  warnings: 0,
  origin: { from: "file", file: "t.csv", table: "t", col: 1 } as const,
});

/** A measured column: values and standard uncertainty in a unit; null is missing. */
export function measured(
  title: string,
  unit: string,
  values: readonly (number | null)[],
  uncertainty: number | null = null,
): Column {
  const factor = scaleFactor(unit);
  return {
    ...parts(title),
    kind: "quantity",
    unit,
    dimension: unitFromCode(unit).dimension,
    values: Float64Array.from(values, (value) => (value === null ? Number.NaN : value * factor)),
    uncertainty:
      uncertainty === null
        ? null
        : Float64Array.from(values, (value) => (value === null ? Number.NaN : uncertainty * factor)),
  };
}
export function labels(title: string, texts: readonly (string | null)[]): Column {
  const names = [...new Set(texts.filter((each) => each !== null))].sort();
  return {
    ...parts(title),
    kind: "label",
    names,
    codes: Int32Array.from(texts, (each) => (each === null ? -1 : names.indexOf(each))),
  };
}
export const tableOf = (rowCount: number, ...columns: readonly Column[]): ColumnTable => ({
  name: "tops",
  rowCount,
  columns: new Map(columns.map((column) => [column.name, column])),
  leftOut: new Map(),
  cellAt: () => null,
  notes: [],
  rows: Array.from({ length: rowCount }, (_, row) => ({ table: "tops", row: row + 1, piece: `B-${row + 1}` })),
});

export const noValues: Amounts = new Map();
/** The checked formula; fails the test if it has problems. */
export function checked(expression: Expression, table: ColumnTable | null, values: Amounts = noValues) {
  const { typed, problems } = checkExpression(expression, scopeFromTable(table, values));
  if (!typed) throw new Error(JSON.stringify(problems));
  return typed;
}
export const computed = (
  table: ColumnTable,
  title: string,
  expression: Expression,
  values: Amounts = noValues,
): Column =>
  columnFromExpression(checked(expression, table, values), title, printExpression(expression), table, values);
export const withFormula = (
  table: ColumnTable,
  title: string,
  expression: Expression,
  values: Amounts = noValues,
): ColumnTable => withColumn(table, computed(table, title, expression, values));
/** A computed quantity: SI values and uncertainties. */
export function quantity(table: ColumnTable, expression: Expression, values: Amounts = noValues) {
  const column = computed(table, "made", expression, values);
  if (column.kind !== "quantity") throw new Error(`not a quantity but ${column.kind}`);
  return column;
}
export const problemsOf = (expression: Expression, table: ColumnTable | null, values: Amounts = noValues) =>
  checkExpression(expression, scopeFromTable(table, values)).problems;
