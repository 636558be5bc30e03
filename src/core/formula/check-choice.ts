import { checkBinary } from "./check-binary.ts";
import type { CheckWork, Operand } from "./check-work.ts";
import { failOperand, pushOperand, unknownOperand } from "./check-work.ts";
import type { Expression } from "./expression.ts";
import { formulaProblem } from "./formula-problem.ts";
import { typeInWords } from "./value-type.ts";

/** `if A then B else C`: A a condition, B and C alike. */
export function checkChoice(
  work: CheckWork,
  node: Extract<Expression, { kind: "if" }>,
  [condition, yes, no]: readonly Operand[],
) {
  if (!condition?.type || !yes?.type || !no?.type) return void work.stack.push(unknownOperand(node));
  if (condition.type.kind !== "yes-no")
    return failOperand(
      work,
      node,
      formulaProblem(condition.span, "wrong-kind", { found: typeInWords(condition.type), needed: "a condition" }),
    );
  const type = yes.type.kind === "missing" ? no.type : yes.type;
  const like = yes.type.kind === "missing" || no.type.kind === "missing" || checkBinary("=", yes.type, no.type).ok;
  if (!like)
    return failOperand(
      work,
      node,
      formulaProblem(no.span, "wrong-dimension", {
        left: typeInWords(yes.type),
        right: typeInWords(no.type),
        doing: "Choosing",
      }),
    );
  pushOperand(
    work,
    node,
    type.kind === "quantity" ? { kind: "quantity", dimension: type.dimension, unit: type.unit } : type,
    {
      does: "choose",
    },
  );
}
