// A formula in words: a plain name as it is, anything else as it would be printed.
import { type Expression, printExpression } from "../../core/formula/index.ts";

export const expressionText = (expression: Expression): string =>
  expression.kind === "name" ? expression.name : printExpression(expression);
