import { limits } from "../base/index.ts";
import { isTooHigh } from "./check-binary.ts";
import type { Span } from "./expression.ts";
import type { FormulaProblem } from "./formula-problem.ts";
import { formulaProblem } from "./formula-problem.ts";
import type { FormulaScope } from "./formula-scope.ts";
import type { Step } from "./typed-expression.ts";
import type { ValueType } from "./value-type.ts";

/** What an operand is; null if it has a problem of its own. `literal`: its text and its step, for comparing with a grade. */
export type Operand = {
  readonly type: ValueType | null;
  readonly span: Span;
  readonly literal?: { readonly text: string; readonly step: number };
};

/** What checking a formula gathers: the steps so far, the operands waiting, and what was found. */
export type CheckWork = {
  readonly scope: FormulaScope;
  readonly steps: Step[];
  readonly stack: Operand[];
  readonly problems: FormulaProblem[];
  readonly columns: Set<string>;
  readonly values: Set<string>;
};

/** An operand that has a problem of its own. */
export const unknownOperand = (node: Span): Operand => ({ type: null, span: node });

/** Pushes an operand with the steps that make it. */
export function pushOperand(work: CheckWork, node: Span, type: ValueType | null, ...steps: readonly Step[]): void {
  work.steps.push(...steps);
  if (type?.kind === "quantity" && isTooHigh(type.dimension, limits.unitExponent.value)) {
    work.problems.push(
      formulaProblem(node, "limit", {
        what: limits.unitExponent.words,
        limit: String(limits.unitExponent.value),
        found: "higher",
      }),
    );
    work.stack.push(unknownOperand(node));
  } else work.stack.push({ type, span: node });
}

/** Notes problems; what rests on the operand raises no further ones. */
export function failOperand(work: CheckWork, node: Span, ...problems: readonly FormulaProblem[]): void {
  work.problems.push(...problems);
  work.stack.push(unknownOperand(node));
}
