import type { Expression } from "../../../../core/formula/index.ts";
import type { QuestionSyntax } from "../../../language/index.ts";

const own: {
  readonly [A in QuestionSyntax["asks"]]: (
    question: Extract<QuestionSyntax, { readonly asks: A }>,
  ) => readonly (Expression | null)[];
} = {
  relation: ({ y, x, allowingFor, within }) => [y, ...x, ...allowingFor, within],
  comparison: ({ y, across }) => [y, across],
  agreement: ({ a, b }) => [a, b],
  words: ({ notes, across }) => [notes, across],
  word: ({ notes, x }) => [notes, x],
  prediction: ({ y, when }) => [y, ...when.flatMap(({ x, is }) => [x, is])],
  ranking: ({ expression }) => [expression],
};

/** Every formula of a question, its condition too, in reading order. */
export function questionExpressions(question: QuestionSyntax): readonly (Expression | null)[] {
  const pick = own[question.asks] as (question: QuestionSyntax) => readonly (Expression | null)[];
  return [...pick(question), question.where];
}
