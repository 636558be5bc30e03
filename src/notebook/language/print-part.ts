// A formula as a part of a sentence: in brackets where the sentence's own words would be taken for the formula's.
import { type Expression, printExpression } from "../../core/formula/index.ts";

const isLoose = (expression: Expression): boolean =>
  expression.kind === "in" ||
  expression.kind === "if" ||
  expression.kind === "group" ||
  (expression.kind === "unary" && expression.operator === "not") ||
  (expression.kind === "binary" && (expression.operator === "and" || expression.operator === "or"));

export const printPart = (expression: Expression): string =>
  isLoose(expression) ? `(${printExpression(expression)})` : printExpression(expression);
