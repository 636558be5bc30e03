import type { EntryKind } from "../../entry-kind.ts";
import { checkQuestion } from "./check-question.ts";
import { runQuestion } from "./run-question.ts";
import { viewQuestion } from "./view-question.ts";

export const question = {
  id: "question",
  title: "Question",
  sentence: "A sentence that asks something of columns.",
  example: "final_thickness against stiffness_along, allowing for species",
  check: checkQuestion,
  run: runQuestion,
  view: viewQuestion,
} as const satisfies EntryKind;
