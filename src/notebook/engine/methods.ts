// The one catalogue of methods: each room brings its list, this joins them.
import type { AnswerKind, Method } from "../../core/base/index.ts";
import { questionMethods } from "../../core/questions/index.ts";
import { rigMethods } from "../../core/rig/index.ts";
import { verdictMethods } from "../../core/verdicts/index.ts";
import { woodMethods } from "../../core/wood/index.ts";
import type { QuestionSyntax } from "../language/index.ts";

/** All methods in the order in which they are shown: questions, verdicts, rig checks, quantities of wood. */
export const methods: readonly Method[] = [...questionMethods, ...verdictMethods, ...rigMethods, ...woodMethods];

const answers: { readonly [A in QuestionSyntax["asks"]]: AnswerKind } = {
  relation: "relation",
  comparison: "comparison",
  agreement: "agreement",
  words: "words",
  word: "words",
  prediction: "prediction",
  ranking: "ranking",
};

/** Names that may stand after `by` in a question of this sort. */
export const questionMethodNames = (asks: QuestionSyntax["asks"]): readonly string[] =>
  questionMethods.filter((method) => method.answers === answers[asks]).map((method) => method.id);
