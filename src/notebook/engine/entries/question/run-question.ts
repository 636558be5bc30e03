import type { Column } from "../../../../core/columns/index.ts";
import type { Expression } from "../../../../core/formula/index.ts";
import type { QuestionSyntax } from "../../../language/index.ts";
import { answered } from "../../answered.ts";
import { type Computed, computed, failed, type Inputs, type LocalProblem } from "../../cell.ts";
import { type Answered, cells } from "../../cells.ts";
import { amountsNamed, columnFrom, type InReach, maskFrom } from "../../evaluated.ts";
import { expressionText } from "../../expression-text.ts";
import type { AskingContext } from "./asking.ts";
import { askings } from "./askings.ts";
import type { QuestionSpec } from "./question-spec.ts";

/** Looks up the columns of a question and asks it. A column of the wrong kind is a refusal; a formula that is wrong is a problem. */
export function runQuestion(spec: QuestionSpec, inputs: Inputs): Computed<Answered> {
  const [slice, asked] = [inputs.get(cells.slice(spec.key)), inputs.get(cells.askedOf(spec.key))];
  if (!slice.ok || !asked.ok) return failed();
  const anchor = spec.question.where ?? anchorOf(spec.question);
  const amounts = amountsNamed(spec.amounts, anchor, inputs);
  if (!amounts.ok) return amounts;
  const lexicon = spec.usesLexicon ? inputs.get(cells.lexicon()) : null;
  const reach: InReach = { ...slice.value, amounts: amounts.value };
  const problems: LocalProblem[] = [];
  const columnOf = (expression: Expression): Column | null => {
    const text = expressionText(expression);
    const column = columnFrom(expression, text, text, reach);
    if (!column.ok) problems.push(...column.problems);
    return column.ok ? column.value : null;
  };
  const mask = spec.question.where ? maskFrom(spec.question.where, reach) : null;
  if (mask && !mask.ok) problems.push(...mask.problems);
  const ask = askings[spec.question.asks] as (
    question: QuestionSyntax,
    context: AskingContext,
  ) => ReturnType<(typeof askings)["relation"]>;
  const answer = ask(spec.question, {
    table: slice.value.table,
    columnOf,
    reach,
    mask: mask?.ok ? mask.value : null,
    by: spec.by,
    asked: asked.value,
    lexicon: lexicon?.ok ? lexicon.value : new Map(),
  });
  if (problems.length > 0 || answer === null) return failed(...problems);
  return computed(answered(answer.finding, answer.columns, answer.drawn));
}

const anchorOf = (question: QuestionSyntax): Expression =>
  question.asks === "agreement"
    ? question.a
    : question.asks === "ranking"
      ? question.expression
      : question.asks === "words" || question.asks === "word"
        ? question.notes
        : question.y;
