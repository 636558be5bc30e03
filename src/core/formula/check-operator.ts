import { checkBinary } from "./check-binary.ts";
import type { CheckWork, Operand } from "./check-work.ts";
import { failOperand, pushOperand, unknownOperand } from "./check-work.ts";
import type { Expression } from "./expression.ts";
import { formulaProblem } from "./formula-problem.ts";
import { nearestName } from "./nearest-name.ts";
import type { ValueType } from "./value-type.ts";

/** A text beside a grade is one of its levels: its step becomes the level's place. */
function asLevel(work: CheckWork, text: Operand, grade: ValueType): Operand {
  if (grade.kind !== "grade" || text.type?.kind !== "text" || !text.literal) return text;
  const plain = text.literal.text.trim();
  const level = [plain, plain.split("/")[0] ?? plain]
    .map((each) => grade.levels.indexOf(each))
    .find((each) => each >= 0);
  if (level === undefined) {
    const near = nearestName(plain, grade.levels);
    work.problems.push(
      formulaProblem(
        text.span,
        "wrong-kind",
        { found: `"${plain}"`, needed: `one of the grades ${grade.levels.join(", ")}` },
        near,
      ),
    );
    return unknownOperand(text.span);
  }
  work.steps[text.literal.step] = { does: "constant", value: level, uncertainty: 0, source: "" };
  return { type: grade, span: text.span };
}

/** Two operands and the sign between them. */
export function checkOperator(
  work: CheckWork,
  node: Extract<Expression, { kind: "binary" }>,
  [first, second]: readonly Operand[],
) {
  if (!first?.type || !second?.type) return void work.stack.push(unknownOperand(node));
  const left = asLevel(work, first, second.type);
  const right = asLevel(work, second, first.type);
  if (!left.type || !right.type) return void work.stack.push(unknownOperand(node));
  const checked = checkBinary(node.operator, left.type, right.type);
  if (checked.ok) return pushOperand(work, node, checked.type, ...checked.steps);
  const at = checked.at === "operator" ? node.operatorSpan : checked.at === "left" ? left.span : right.span;
  failOperand(work, node, { span: { from: at.from, to: at.to }, code: checked.code, facts: checked.facts });
}
