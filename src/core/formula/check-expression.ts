// Kind, dimension and unit of every part of a formula, before anything is computed.
import { limits } from "../base/index.ts";
import { daysFromDate } from "../columns/index.ts";
import { coherentUnit, toSi, type Unit, unitFromText } from "../units/index.ts";
import { checkBinary, isTooHigh } from "./check-binary.ts";
import { checkChoice } from "./check-choice.ts";
import { checkFunction } from "./check-function.ts";
import { checkOperator } from "./check-operator.ts";
import type { CheckWork, Operand } from "./check-work.ts";
import { failOperand, pushOperand, unknownOperand } from "./check-work.ts";
import { exactNumber } from "./exact-number.ts";
import type { Expression } from "./expression.ts";
import { expressionWalk, operandsOf } from "./expression-walk.ts";
import type { FormulaProblem } from "./formula-problem.ts";
import { formulaProblem, unknownFunction } from "./formula-problem.ts";
import type { FormulaScope } from "./formula-scope.ts";
import { groupFunctionsByName } from "./function-catalogue.ts";
import { nearestName } from "./nearest-name.ts";
import { printExpression } from "./print-expression.ts";
import type { TypedExpression } from "./typed-expression.ts";
import type { ValueType } from "./value-type.ts";
import { plainNumber, typeInWords } from "./value-type.ts";

export type CheckedExpression = {
  readonly typed: TypedExpression | null;
  readonly problems: readonly FormulaProblem[];
};

/** Largest exponent with which a unit can be written. */
const SHOWN_EXPONENT = 9;

function checkNumber(work: CheckWork, node: Extract<Expression, { kind: "number" }>) {
  const unit: Unit | null = node.unit === null ? null : unitFromText(node.unit);
  if (node.unit !== null && !unit)
    return failOperand(work, node, formulaProblem(node.unitSpan ?? node, "unknown-unit", { unit: node.unit }));
  const exact = unit || node.uncertainty ? undefined : exactNumber(node.value);
  const value = unit ? toSi(node.value, unit) : node.value;
  const uncertainty = (node.uncertainty ?? 0) * (unit?.factor ?? 1);
  const type: ValueType = unit
    ? { kind: "quantity", dimension: unit.dimension, unit: unit.code }
    : { ...plainNumber, ...(exact ? { constant: exact } : {}) };
  pushOperand(work, node, type, {
    does: "constant",
    value: Number.isFinite(value) ? value : Number.NaN,
    uncertainty,
    source: `number at ${node.from}`,
  });
}

function checkName(work: CheckWork, node: Extract<Expression, { kind: "name" }>) {
  const { columns, values, table } = work.scope;
  const column = columns.get(node.name);
  const value = values.get(node.name);
  if (column) {
    work.columns.add(node.name);
    pushOperand(work, node, column, { does: "column", name: node.name });
  } else if (value) {
    work.values.add(node.name);
    pushOperand(work, node, value, { does: "value", name: node.name });
  } else {
    const near = nearestName(node.name, [...columns.keys(), ...values.keys()]);
    failOperand(
      work,
      node,
      table === null
        ? formulaProblem(node, "unknown-name", { name: node.name }, near)
        : formulaProblem(node, "unknown-column", { name: node.name, table }, near),
    );
  }
}

function checkUnary(work: CheckWork, node: Extract<Expression, { kind: "unary" }>, operand: Operand) {
  const type = operand.type;
  if (!type) return void work.stack.push(unknownOperand(node));
  if (node.operator === "not") {
    if (type.kind !== "yes-no")
      return failOperand(
        work,
        node,
        formulaProblem(operand.span, "wrong-kind", { found: typeInWords(type), needed: "a condition" }),
      );
    return pushOperand(work, node, type, { does: "not" });
  }
  if (type.kind !== "quantity")
    return failOperand(
      work,
      node,
      formulaProblem(operand.span, "wrong-kind", { found: typeInWords(type), needed: "a quantity" }),
    );
  pushOperand(work, node, type.constant ? { ...type, constant: [-type.constant[0], type.constant[1]] } : type, {
    does: "negate",
  });
}

function checkGroup(work: CheckWork, node: Extract<Expression, { kind: "group" }>, depth: number) {
  const calls = groupFunctionsByName.get(node.name);
  if (!calls) return failOperand(work, node, unknownFunction(node, groupFunctionsByName.keys()));
  if (work.scope.table === null)
    return failOperand(
      work,
      node,
      formulaProblem(node.nameSpan, "wrong-kind", { found: "a single value", needed: "the columns of a table" }),
    );
  const of = checkAt(node.of, work.scope, depth + 1);
  const by = node.by ? checkAt(node.by, work.scope, depth + 1) : null;
  const found = [...of.problems, ...(by?.problems ?? [])];
  if (!of.typed || (by && !by.typed)) return failOperand(work, node, ...found);
  if (calls.gives === "same" && of.typed.type.kind !== "quantity")
    found.push(formulaProblem(node.of, "wrong-kind", { found: typeInWords(of.typed.type), needed: "a quantity" }));
  if (node.by && by?.typed && (by.typed.type.kind === "quantity" || by.typed.type.kind === "missing"))
    found.push(formulaProblem(node.by, "wrong-kind", { found: typeInWords(by.typed.type), needed: "a label" }));
  if (found.length > 0) return failOperand(work, node, ...found);
  for (const part of [of.typed, by?.typed]) {
    for (const name of part?.columns ?? []) work.columns.add(name);
    for (const name of part?.values ?? []) work.values.add(name);
  }
  const type = calls.gives === "number" ? plainNumber : of.typed.type;
  pushOperand(
    work,
    node,
    type.kind === "quantity" ? { kind: "quantity", dimension: type.dimension, unit: type.unit } : type,
    {
      does: "group",
      calls,
      of: of.typed,
      by: by?.typed ?? null,
      says: printExpression(node),
    },
  );
}

function checkShown(work: CheckWork, node: Extract<Expression, { kind: "in" }>, operand: Operand) {
  const unit = unitFromText(node.unit);
  if (!unit) return failOperand(work, node, formulaProblem(node.unitSpan, "unknown-unit", { unit: node.unit }));
  const type = operand.type;
  if (!type) return void work.stack.push(unknownOperand(node));
  const wanted: ValueType = { kind: "quantity", dimension: unit.dimension, unit: unit.code };
  const moisture = type.kind === "quantity" && isPercent(type) && unit.code === "%MC";
  if (type.kind === "missing" || moisture || (type.kind === "quantity" && checkBinary("=", type, wanted).ok))
    return pushOperand(work, node, wanted);
  failOperand(
    work,
    node,
    formulaProblem(node.unitSpan, "wrong-dimension", {
      left: typeInWords(type),
      right: typeInWords(wanted),
      doing: `Showing it in ${node.unit}`,
    }),
  );
}

const isPercent = (type: ValueType): boolean => checkBinary("=", type, plainNumber).ok;

function checkNode(work: CheckWork, node: Expression, depth: number) {
  const operands = work.stack.splice(work.stack.length - operandsOf(node).length);
  const [only = unknownOperand(node)] = operands;
  switch (node.kind) {
    case "number":
      return checkNumber(work, node);
    case "name":
      return checkName(work, node);
    case "text":
      work.stack.push({ type: { kind: "text" }, span: node, literal: { text: node.value, step: work.steps.length } });
      return void work.steps.push({ does: "text", value: node.value });
    case "date": {
      const days = daysFromDate(node.value);
      if (Number.isNaN(days))
        return failOperand(
          work,
          node,
          formulaProblem(node, "syntax", { found: node.value, expected: "a day such as 2024-05-02" }),
        );
      return pushOperand(work, node, { kind: "date" }, { does: "constant", value: days, uncertainty: 0, source: "" });
    }
    case "missing":
      return pushOperand(
        work,
        node,
        { kind: "missing" },
        { does: "constant", value: Number.NaN, uncertainty: 0, source: "" },
      );
    case "unary":
      return checkUnary(work, node, only);
    case "binary":
      return checkOperator(work, node, operands);
    case "if":
      return checkChoice(work, node, operands);
    case "call":
      return checkFunction(work, node, operands);
    case "group":
      return checkGroup(work, node, depth);
    case "in":
      return checkShown(work, node, only);
  }
}

function checkAt(expression: Expression, scope: FormulaScope, depth: number): CheckedExpression {
  const { order, past } = expressionWalk(expression, depth, {
    depth: limits.formulaDepth.value,
    nodes: limits.formulaOperators.value,
  });
  if (past) {
    const limit = past.limit === "depth" ? limits.formulaDepth : limits.formulaOperators;
    return {
      typed: null,
      problems: [formulaProblem(past.at, "limit", { what: limit.words, limit: String(limit.value), found: "more" })],
    };
  }
  const work: CheckWork = { scope, steps: [], stack: [], problems: [], columns: new Set(), values: new Set() };
  for (const { node, depth: at } of order) checkNode(work, node, at);
  const type = work.stack[0]?.type ?? null;
  if (work.problems.length > 0 || !type) return { typed: null, problems: work.problems };
  if (type.kind === "quantity" && type.unit === null && isTooHigh(type.dimension, SHOWN_EXPONENT)) {
    return {
      typed: null,
      problems: [
        formulaProblem(expression, "limit", {
          what: limits.unitExponent.words,
          limit: String(SHOWN_EXPONENT),
          found: "higher",
        }),
      ],
    };
  }
  const unit = type.kind === "quantity" ? (type.unit ?? coherentUnit(type.dimension)) : "1";
  return {
    typed: { type, unit, steps: work.steps, columns: [...work.columns].sort(), values: [...work.values].sort() },
    problems: [],
  };
}

/**
 * Whether a formula makes sense, and as what: its kind, dimension and unit, ready to compute; or every problem with its place in the text and,
 * where a name is nearly right, the name that was meant. A part with a problem raises no further ones.
 */
export const checkExpression = (expression: Expression, scope: FormulaScope): CheckedExpression =>
  checkAt(expression, scope, 0);
