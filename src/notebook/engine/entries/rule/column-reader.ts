// Reads the formulas of a rule as columns, conditions and amounts, and keeps what went wrong with each.
import type { Refusal } from "../../../../core/base/index.ts";
import type { Column, LabelColumn, QuantityColumn } from "../../../../core/columns/index.ts";
import type { Expression } from "../../../../core/formula/index.ts";
import type { Condition, RuleAmount } from "../../../../core/verdicts/index.ts";
import type { LocalProblem } from "../../cell.ts";
import { amountFrom, columnFrom, type InReach } from "../../evaluated.ts";
import { expressionNames } from "../../expression-names.ts";
import { expressionText } from "../../expression-text.ts";
import { neededLabel } from "../../label-of.ts";
import { quantityOf } from "../../quantity-of.ts";

export type ColumnReader = {
  readonly quantity: (expression: Expression) => QuantityColumn | null;
  readonly label: (expression: Expression) => LabelColumn | null;
  readonly condition: (expression: Expression) => Condition | null;
  readonly amount: (expression: Expression) => RuleAmount | null;
  readonly problems: () => readonly LocalProblem[];
  /** The first column of a wrong kind, as a refusal. */
  readonly refusal: () => Refusal | null;
  /** Columns read so far. */
  readonly columns: () => readonly Column[];
};

/** A reader over what is in reach of a rule. */
export function columnReader(reach: InReach): ColumnReader {
  const problems: LocalProblem[] = [];
  const read: Column[] = [];
  let refusal: Refusal | null = null;
  const column = (expression: Expression): Column | null => {
    const text = expressionText(expression);
    const made = columnFrom(expression, text, text, reach);
    if (!made.ok) {
      problems.push(...made.problems);
      return null;
    }
    read.push(made.value);
    return made.value;
  };
  return {
    quantity: (expression) => {
      const made = column(expression);
      const quantity = made ? quantityOf(made) : null;
      if (quantity && !quantity.ok) refusal ??= quantity.refusal;
      return quantity?.ok ? quantity.value : null;
    },
    label: (expression) => {
      const made = column(expression);
      const label = made ? neededLabel(made) : null;
      if (label && !label.ok) refusal ??= label.refusal;
      return label?.ok ? label.value : null;
    },
    condition: (expression) => {
      const text = expressionText(expression);
      const made = columnFrom(expression, text, text, reach);
      if (!made.ok) problems.push(...made.problems);
      else if (made.value.kind !== "yes-no")
        refusal ??= {
          code: "wrong-kind",
          facts: { column: text, found: `a ${made.value.kind}`, needed: "a condition" },
        };
      for (const { name } of expressionNames(expression)) {
        const behind = reach.table.columns.get(name);
        if (behind) read.push(behind);
      }
      return made.ok && made.value.kind === "yes-no" ? { words: text, holds: made.value.values } : null;
    },
    amount: (expression) => {
      const made = amountFrom(expression, reach.amounts);
      if (!made.ok) problems.push(...made.problems);
      else if (made.value.value === null)
        refusal ??= { code: "not-finite", facts: { name: expressionText(expression) } };
      return made.ok && made.value.value !== null ? { value: made.value.value, unit: made.value.unit } : null;
    },
    problems: () => problems,
    refusal: () => refusal,
    columns: () => [...new Set(read)],
  };
}
