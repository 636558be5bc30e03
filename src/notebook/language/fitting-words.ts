// What may come next after the beginning of a sentence: each candidate is tried, and kept if the grammar takes it there.
import { type EntryKindId } from "./entry-syntax.ts";
import { phrases } from "./phrases.ts";
import { sentenceTree } from "./sentence-parser.ts";

/** What may follow: words of the sentences, and kinds of thing in words ("a name", "a unit"). */
export type Fitting = { readonly words: readonly string[]; readonly things: readonly string[] };

const NOTHING: Fitting = { words: [], things: [] };
const LONGEST = 2000;
/** One example of each kind of thing that is not a word, and the node it has to become. */
const THINGS: readonly (readonly [said: string, text: string, nodes: readonly string[]])[] = [
  ["a column or a formula", "x", ["Name"]],
  ["the name of an entry", "x", ["EntryName"]],
  ["the name of a method", "x", ["MethodName"]],
  ["a label", "x", ["Label"]],
  ["the name of a piece", "x", ["Piece"]],
  ["a file", "x.csv", ["File"]],
  ["a number", "1", ["Number"]],
  ["a unit", "mm", ["Unit"]],
  ["text in quotes", '"x"', ["Text"]],
  ["a date as year-month-day", "2024-05-02", ["StatedDate"]],
  ["a word", "x", ["LexiconWord"]],
  ["a colon", ":", [":"]],
  ["an equals sign", "=", ["Equal"]],
  ["a closing bracket", ")", [")"]],
  ["an operator", "*", ["Times"]],
];

function takes(kind: EntryKindId, before: string, text: string, rest: string, nodes: readonly string[]): boolean {
  const whole = `${before}${text}${rest}`;
  const tree = sentenceTree(kind, whole);
  if (!nodes.includes(tree.resolveInner(before.length, 1).name)) return false;
  let clean = true;
  tree.iterate({ enter: ({ type, from, to }) => { if (type.isError && (from < before.length + text.length || to > from) && from < whole.length) clean = false; } });
  return clean;
}

/** What fits after `before`, the beginning of a body or of one line. */
export function fittingWords(kind: EntryKindId, before: string): Fitting {
  if (before.length > LONGEST) return NOTHING;
  const start = before === "" || /\s$/.test(before) ? before : `${before} `;
  const terms = new Map<string, { terms: string[]; rest: string }>();
  for (const { term, words } of phrases) terms.set(words, { terms: [...(terms.get(words)?.terms ?? []), term], rest: words === "word" ? ' "x" ' : " x " });
  return {
    words: [...terms].filter(([words, { terms: nodes, rest }]) => takes(kind, start, words, rest, nodes) || (rest !== ' "x" ' && takes(kind, start, words, " ", nodes))).map(([words]) => words),
    things: THINGS.filter(([, text, nodes]) => takes(kind, start, text, "", nodes)).map(([said]) => said),
  };
}
