// The first place that a sentence could not be understood at: what stands there, what could stand there, and the word that was meant.
import { nearestName } from "../../core/formula/index.ts";
import type { EntryKindId } from "./entry-syntax.ts";
import { fittingWords } from "./fitting-words.ts";
import type { SyntaxProblem } from "./syntax-reading.ts";

const SHOWN = 8;
/** Words that go on with a formula: they fit almost everywhere, so they are not told. */
const MINOR = new Set(["and", "or", "is", "is not", "not", "if", "missing"]);

const list = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? "something else") : `${words.slice(0, -1).join(", ")} or ${words.at(-1) ?? ""}`;

/** The word or run of words that a misspelt first word is nearest to. */
function meant(token: string, words: readonly string[]): string | undefined {
  const firstWords = new Map(words.map((each) => [each.split(" ")[0] ?? each, each]));
  const near = nearestName(token, [...words, ...firstWords.keys()]);
  return near === undefined ? undefined : (firstWords.get(near) ?? near);
}

/** The problem. base: where `text` starts in the body; error: where the parser stopped; closely: whether to work out what was expected. */
export function firstSyntaxProblem(
  kind: EntryKindId,
  text: string,
  base: number,
  error: number,
  closely: boolean,
): SyntaxProblem {
  const gap = /^\s*/.exec(text.slice(error))?.[0].length ?? 0;
  const from = error + gap;
  const atEnd = from >= text.length;
  const token = atEnd
    ? ""
    : (/^(?:[\p{L}\p{N}_]+|"[^"\n]*"?|`[^`\n]*`?|[^\s])/u.exec(text.slice(from))?.[0] ?? text.slice(from, from + 1));
  const place = atEnd ? text.trimEnd().length : from;
  const { words, things } = closely ? fittingWords(kind, text.slice(0, error).trimEnd()) : { words: [], things: [] };
  const spelt = words.filter((word) => !MINOR.has(word)).map((word) => `“${word}”`);
  const inFormula = things.includes("an operator");
  const said = things.filter((thing) =>
    thing === "an operator" ? spelt.length === 0 : !(inFormula && thing === "an equals sign"),
  );
  const expected = list([...said, ...spelt].slice(0, SHOWN));
  const near = token.length > 2 ? meant(token, words) : undefined;
  const shown = token.length > 40 ? `${token.slice(0, 40)}…` : token;
  return {
    code: "syntax",
    span: { from: base + place, to: base + (atEnd ? place : from + token.length) },
    facts: { found: atEnd ? "The end" : shown, expected },
    ...(near === undefined || near === token ? {} : { suggestion: near }),
  };
}
