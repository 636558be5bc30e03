// Completion of names while a sentence is written.
import type { CompletionContext } from "@codemirror/autocomplete";
import { EditorState, type Extension } from "@codemirror/state";

/** The words of sentences and rules, by kind of entry. */
const WORDS: Readonly<Record<string, readonly string[]>> = {
  question: [
    "against",
    "allowing for",
    "within",
    "across",
    "beside",
    "where",
    "by",
    "as a power law",
    "expect",
    "when",
    "rank",
  ],
  rule: [
    "when",
    "rises",
    "falls",
    "within",
    "by at least",
    "expect",
    "stays within",
    "give or take",
    "stated",
    "because",
  ],
  records: ["from", "join", "piece is", "pieces share", "finished on", "correct", "leave out piece", "because"],
  picture: ["against", "by", "where"],
  rig: ["against", "in", "where"],
};

/** Completion for a kind of entry over the names that exist. */
export function sentenceLanguage(kind: string, names: readonly string[]): Extension {
  if (kind === "prose") return [];
  const options = [
    ...names.map((label) => ({ label, type: "variable", boost: 1 })),
    ...(WORDS[kind] ?? []).map((label) => ({ label, type: "keyword" })),
  ];
  const complete = (context: CompletionContext) => {
    const word = context.matchBefore(/[\p{L}\p{N}_]+/u);
    return word === null && !context.explicit ? null : { from: word?.from ?? context.pos, options };
  };
  return EditorState.languageData.of(() => [{ autocomplete: complete }]);
}
