import type { EntryKind } from "../../entry-kind.ts";
import { checkLexicon } from "./check-lexicon.ts";
import { runLexicon } from "./run-lexicon.ts";
import { viewLexicon } from "./view-lexicon.ts";

export const lexicon = {
  id: "lexicon",
  title: "Lexicon",
  sentence: "Families of words that mean the same in tonal notes, one family a line.",
  example: "bright: bright, brilliant, chispa",
  check: checkLexicon,
  run: runLexicon,
  view: viewLexicon,
} as const satisfies EntryKind;
