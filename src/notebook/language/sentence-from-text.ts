// One question without a notebook.
import { type Problem, type ProblemCode, problem } from "../../core/base/index.ts";
import type { QuestionSyntax } from "./entry-syntax.ts";
import { placeInFile } from "./place-in-file.ts";
import { syntaxFromBody } from "./syntax-from-body.ts";

/** The question that a text asks, with what is wrong at its place in the text (line 1 is the text's first). */
export function sentenceFromText(text: string): {
  readonly syntax: QuestionSyntax | null;
  readonly problems: readonly Problem[];
} {
  const { syntax, problems } = syntaxFromBody("question", text);
  return {
    syntax: syntax?.kind === "question" ? syntax.question : null,
    problems: problems.map(({ code, facts, span, suggestion }) =>
      problem<ProblemCode>(code, facts as never, placeInFile({ body: text, bodyLine: 1 }, span), suggestion),
    ),
  };
}
