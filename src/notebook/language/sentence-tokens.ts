// Words told apart. A word is a keyword only where the grammar can take that keyword, so a column may be called `within` or `of` and
// still be named in a formula; a unit is taken after a number, never a name.

import { ExternalTokenizer, type InputStream, type Stack } from "@lezer/lr";
import { groupFunctions } from "../../core/formula/index.ts";
import { phrases } from "./phrases.ts";
import * as terms from "./sentence.grammar.terms";
import { showsInUnit, unitAt, unitLikeAt } from "./unit-at.ts";

const termOf: Readonly<Record<string, number>> = terms;
const term = (name: string): number => termOf[name] ?? -1;

/** The number of a token by its name in the grammar; -1 if there is none. */
export const tokenNumber = term;

/** Words that make `mean of X` a value over a group. */
const groupFunctionNames: ReadonlySet<string> = new Set(groupFunctions.map(({ id }) => id));

const NEAR = 120;
const FAR = 4096;
const WORD = /^[\p{L}_][\p{L}\p{N}_]*/u;
const BACKQUOTED = /^`[^`\n]+`/;
const TEXT = /^(?:"(?:[^"\\\n]|\\.)*"|“[^”\n]*”)/;
const NUMBER = /^(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?/;
const FRACTION = /^(?:\d+[ \u00a0]+)?\d+[/⁄]\d+(?=[ \u00a0]?([\p{L}"′%]))/u;
const DATE = /^\d{4}-\d{2}-\d{2}(?![\d-])/;
const STATED_DATE = /^\d{4}(?:-\d{2}){0,2}(?![\p{L}\p{N}_-])/u;
const LABEL_BEFORE_HAS = /^[^\n,;"`]{1,80}?(?=\s+has\s+(?:more|less)\s)/u;
const LABEL = /^[^\n,;"`]{1,80}?(?=\s*(?:$|[\n,;]|\s(?:by|where|of|within|stated|because|in)\s))/u;

/** The keywords by their first word, compiled: words, then a place where a word ends. */
const byFirstWord = new Map<
  string,
  { readonly term: number; readonly pattern: RegExp; readonly before: RegExp | null }[]
>();
for (const { term: name, words, before } of [...phrases].sort(
  (a, b) => b.words.split(" ").length - a.words.split(" ").length,
)) {
  const first = words.split(" ")[0] ?? words;
  const pattern = new RegExp(`^${words.replaceAll(" ", "\\s+")}(?![\\p{L}\\p{N}_])`, "u");
  byFirstWord.set(first, [...(byFirstWord.get(first) ?? []), { term: term(name), pattern, before: before ?? null }]);
}

/** The next characters, as text: at most `most`. */
function ahead(input: InputStream, most: number): string {
  let text = "";
  for (let i = 0; i < most; i++) {
    const code = input.peek(i);
    if (code < 0) break;
    text += String.fromCharCode(code);
  }
  return text;
}

const line = (text: string): string => text.split("\n", 1)[0] ?? "";

/** Kinds of token whose shape alone decides, in order, each only where it can stand. */
const shapes: readonly { readonly term: number; readonly length: (text: string) => number }[] = (
  [
    ["LexiconWord", /^[^\s:,][^:,\n]*/],
    ["File", /^(?:"(?:[^"\\\n]|\\.)*"|[^\s"`,]+)/],
    ["Piece", /^(?:"(?:[^"\\\n]|\\.)*"|[^\s"](?:[^\n"]*?)(?=\s+because(?:\s|$)|\s*(?:\n|$)))/],
    ["MethodName", /^(?:`[^`\n]+`|[\p{L}_][\p{L}\p{N}_-]*)/u],
    ["EntryName", /^(?:`[^`\n]+`|[\p{L}\p{N}_][\p{L}\p{N}_-]*)/u],
    ["StatedDate", STATED_DATE],
  ] as const
).map(([name, pattern]) => ({
  term: term(name),
  length: (text: string) => (pattern.exec(text)?.[0] ?? "").trimEnd().length,
}));

const isWordStart = (code: number): boolean =>
  code === 95 || code >= 128 || (code >= 65 && code <= 90) || (code >= 97 && code <= 122);

function keywordAt(text: string, stack: Stack): Token | null {
  const first = WORD.exec(text)?.[0];
  if (first === undefined) return null;
  for (const each of byFirstWord.get(first) ?? []) {
    const found = each.pattern.exec(text)?.[0];
    if (found === undefined || !stack.canShift(each.term)) continue;
    if (each.before !== null && !each.before.test(text.slice(found.length))) continue;
    if (each.term === term("ShowIn") && /^in\s+at\s+least\b/.test(text)) continue;
    return { term: each.term, length: found.length };
  }
  return null;
}

function labelAt(text: string, stack: Stack): number {
  if (!stack.canShift(term("Label"))) return 0;
  const quoted = (TEXT.exec(text) ?? BACKQUOTED.exec(text))?.[0];
  if (stack.canShift(term("When"))) {
    if (quoted !== undefined) return /^\s+has\s+(?:more|less)\s/.test(text.slice(quoted.length)) ? quoted.length : 0;
    return /^when\s/.test(text) ? 0 : (LABEL_BEFORE_HAS.exec(text)?.[0].length ?? 0);
  }
  return quoted?.length ?? LABEL.exec(text)?.[0].length ?? 0;
}

/** Length of the unit after a number, or after `in`. */
function unitLength(text: string, stack: Stack): number {
  const here = line(text);
  if (/^in\s+at\s+least\b/.test(text)) return 0;
  if (showsInUnit(here) && stack.canShift(term("ShowIn"))) return 0;
  const known = unitAt(here);
  return known > 0 ? known : keywordAt(text, stack) === null ? unitLikeAt(here) : 0;
}

type Token = { readonly term: number; readonly length: number };

/** The token where the input stands, or none. */
function tokenAt(input: InputStream, stack: Stack): Token | null {
  const { next } = input;
  const take = (name: number, length: number): Token => ({ term: name, length });
  if (next < 0 || next === 32 || next === 10 || next === 13 || next === 9) return null;
  const wide = shapes.find((shape) => stack.canShift(shape.term));
  const near = ahead(input, NEAR);
  const label = labelAt(near, stack);
  if (label > 0) return take(term("Label"), label);
  if (wide !== undefined) {
    const length = wide.length(ahead(input, FAR));
    if (length > 0) return take(wide.term, length);
  }
  if (stack.canShift(term("Unit"))) {
    const length = unitLength(near, stack);
    if (length > 0) return take(term("Unit"), length);
  }
  if (next === 34 || next === 0x201c) {
    const text = TEXT.exec(ahead(input, FAR))?.[0];
    if (text !== undefined) return take(term("Text"), text.length);
    return null;
  }
  if (next === 96) {
    const name = BACKQUOTED.exec(ahead(input, 600))?.[0];
    if (name !== undefined) return take(term("Name"), name.length);
    return null;
  }
  if ((next >= 48 && next <= 57) || next === 46) {
    const date = DATE.exec(near)?.[0];
    if (date !== undefined) return take(term("Date"), date.length);
    const fraction = FRACTION.exec(near)?.[0];
    if (fraction !== undefined && unitAt(line(near.slice(fraction.length)).trimStart()) > 0)
      return take(term("Number"), fraction.length);
    const number = NUMBER.exec(near)?.[0];
    if (number !== undefined) return take(term("Number"), number.length);
    return null;
  }
  if (!isWordStart(next)) return null;
  const keyword = keywordAt(near, stack);
  if (keyword !== null) return take(keyword.term, keyword.length);
  const word = WORD.exec(near)?.[0];
  if (word === undefined) return null;
  if (stack.canShift(term("GroupName")) && groupFunctionNames.has(word) && /^\s+of\s/.test(near.slice(word.length)))
    return take(term("GroupName"), word.length);
  return take(
    term("Name"),
    word.length < NEAR ? word.length : (WORD.exec(ahead(input, FAR))?.[0].length ?? word.length),
  );
}

/** Reads one token where the input stands, or none. */
export function readSentenceToken(input: InputStream, stack: Stack): void {
  const token = tokenAt(input, stack);
  if (token === null) return;
  input.advance(token.length);
  input.acceptToken(token.term);
}

/** The tokens of sentences that need more than their first letter to be told apart. */
export const sentenceTokens = new ExternalTokenizer(readSentenceToken, { contextual: true });
