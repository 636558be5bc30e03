import { nearestName } from "../../../../core/formula/index.ts";
import type { Entry } from "../../../language/index.ts";
import { type LocalProblem, needs } from "../../cell.ts";
import { cells } from "../../cells.ts";
import { type EntryPlan, onlyProblems } from "../../entry-kind.ts";
import { expressionNames } from "../../expression-names.ts";
import { ledgerPlans } from "../../ledger-plans.ts";
import { questionMethodNames } from "../../methods.ts";
import { slicePlans } from "../../slice-plans.ts";
import type { Surroundings } from "../../surroundings.ts";
import { questionExpressions } from "./question-expressions.ts";
import type { QuestionSpec } from "./question-spec.ts";
import { runQuestion } from "./run-question.ts";

/** A question: the table that has its columns, the count of the ledger, and the answer. */
export function checkQuestion(entry: Entry, key: string, around: Surroundings): EntryPlan {
  if (entry.syntax?.kind !== "question") return onlyProblems();
  const { question } = entry.syntax;
  const problems: LocalProblem[] = [];
  if (question.by && !questionMethodNames(question.asks).includes(question.by.name)) {
    const suggestion = nearestName(question.by.name, questionMethodNames(question.asks));
    problems.push({
      code: "unknown-method",
      facts: { name: question.by.name },
      span: question.by,
      ...(suggestion ? { suggestion } : {}),
    });
  }
  if (around.tables.length === 0)
    problems.push({ code: "unknown-table", facts: { name: question.of?.name ?? "to ask" }, span: question.of });
  const names = expressionNames(...questionExpressions(question));
  const amounts = names.filter((each) => around.amounts.has(each.name));
  const spec: QuestionSpec = {
    key,
    question,
    amounts: amounts.map((each) => each.name),
    by: question.by?.name ?? null,
    usesLexicon: question.asks === "words" || question.asks === "word",
  };
  const of = question.of ?? (question.asks === "ranking" ? question.table : null);
  const plans = [...slicePlans({ key, names, of }, around), ...ledgerPlans(key)];
  if (problems.length > 0) return { cells: plans, problems, shows: null };
  return {
    problems,
    shows: cells.answer(key),
    cells: [
      ...plans,
      {
        cell: cells.answer(key),
        says: entry.name,
        base: 0,
        key: JSON.stringify(spec),
        needs: [
          needs(cells.slice(key)),
          needs(cells.askedOf(key)),
          ...amounts.map((each) => needs(cells.amount(each.name), each.name, each)),
          ...(spec.usesLexicon ? [needs(cells.lexicon())] : []),
        ],
        run: (inputs) => runQuestion(spec, inputs),
      },
    ],
  };
}
