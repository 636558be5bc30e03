// What may come next after the beginning of a sentence. The beginning is parsed once; where it ends, the parser is asked which of all
// the tokens it could take.
import { ExternalTokenizer } from "@lezer/lr";
import type { EntryKindId } from "./entry-syntax.ts";
import { phrases } from "./phrases.ts";
import { sentenceParser } from "./sentence-parser.ts";
import { readSentenceToken, sentenceTokens, tokenNumber } from "./sentence-tokens.ts";
import { strictTree } from "./strict-tree.ts";

/** What may follow: words of the sentences, and kinds of thing in words ("a number", "a unit"). */
export type Fitting = { readonly words: readonly string[]; readonly things: readonly string[] };

const NOTHING: Fitting = { words: [], things: [] };
const LONGEST = 20_000;
/** A letter of no sentence: the parser stops before it. */
const STOP = "\u0001";

/** Kinds of thing that are not words, by their token. */
const THINGS: readonly (readonly [said: string, token: string])[] = [
  ["a name", "Name"],
  ["the name of an entry", "EntryName"],
  ["the name of a method", "MethodName"],
  ["a label", "Label"],
  ["the name of a piece", "Piece"],
  ["a file", "File"],
  ["a number", "Number"],
  ["a unit", "Unit"],
  ["text in quotes", "Text"],
  ["a date as year-month-day", "StatedDate"],
  ["a word", "LexiconWord"],
];
/** Marks, each tried: the tokenizer is not asked where only marks fit. */
const MARKS: readonly (readonly [said: string, mark: string])[] = [
  ["a colon", ":"],
  ["an equals sign", "="],
  ["a closing bracket", ")"],
  ["an operator", "*"],
];

/** What fits after `before`, the beginning of a body or of one line. */
export function fittingWords(kind: EntryKindId, before: string): Fitting {
  if (before.length > LONGEST) return NOTHING;
  const start = before === "" || /\s$/.test(before) ? before : `${before} `;
  let tokens: ReadonlySet<string> | null = null;
  const asking = new ExternalTokenizer(
    (input, stack) => {
      if (input.pos < start.length) return readSentenceToken(input, stack);
      const all = [...phrases.map(({ term }) => term), ...THINGS.map(([, token]) => token)];
      tokens ??= new Set(all.filter((token) => stack.canShift(tokenNumber(token))));
    },
    { contextual: true },
  );
  strictTree(sentenceParser(kind).configure({ tokenizers: [{ from: sentenceTokens, to: asking }] }), `${start}${STOP}`);
  const taken: ReadonlySet<string> = tokens ?? new Set<string>();
  const marks = MARKS.filter(
    ([, mark]) =>
      (kind === "lexicon") === (mark === ":") &&
      (strictTree(sentenceParser(kind), `${start}${mark}`).stoppedAt ?? start.length + 1) > start.length,
  );
  const formula = taken.has("Name") && taken.has("Number");
  return {
    words: [...new Set(phrases.filter(({ term }) => taken.has(term)).map(({ words }) => words))],
    things: [
      ...THINGS.filter(([, token]) => taken.has(token)).map(([said, token]) =>
        token === "Name" && formula ? "a column or a formula" : said,
      ),
      ...marks.map(([said]) => said),
    ],
  };
}
