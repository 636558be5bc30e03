import { checkCall, wrongCount } from "./check-call.ts";
import type { CheckWork, Operand } from "./check-work.ts";
import { failOperand, pushOperand, unknownOperand } from "./check-work.ts";
import type { Expression } from "./expression.ts";
import { formulaProblem, unknownFunction } from "./formula-problem.ts";
import { functionsByName } from "./function-catalogue.ts";
import { printExpression } from "./print-expression.ts";
import { typeInWords } from "./value-type.ts";

/** A function of the catalogue with its arguments. */
export function checkFunction(
  work: CheckWork,
  node: Extract<Expression, { kind: "call" }>,
  operands: readonly Operand[],
) {
  const calls = functionsByName.get(node.name);
  if (!calls) return failOperand(work, node, unknownFunction(node, functionsByName.keys()));
  const count = wrongCount(node, calls);
  if (count) return failOperand(work, node, count);
  const [only] = operands;
  if (calls.fromText) {
    if (!only?.type) return void work.stack.push(unknownOperand(node));
    const value = only.literal ? calls.fromText(only.literal.text) : null;
    const meaning = calls.arguments[0]?.meaning ?? "a text";
    if (value === null || !only.literal)
      return failOperand(
        work,
        node,
        formulaProblem(only.span, "wrong-kind", {
          found: only.literal ? `"${only.literal.text}"` : typeInWords(only.type),
          needed: `${calls.arguments[0]?.name ?? "text"} (${meaning})`,
        }),
      );
    work.steps[only.literal.step] = { does: "constant", value, uncertainty: 0, source: "" };
    return pushOperand(work, node, { kind: "quantity", dimension: calls.dimension([]), unit: calls.unit });
  }
  const types = operands.map(({ type }) => type);
  if (types.some((type) => type === null)) return void work.stack.push(unknownOperand(node));
  const result = checkCall(
    node,
    calls,
    types.filter((type) => type !== null),
  );
  if ("kind" in result)
    pushOperand(work, node, result, {
      does: "call",
      calls,
      count: operands.length,
      says: calls.scatter ? printExpression(node) : "",
    });
  else failOperand(work, node, ...result);
}
