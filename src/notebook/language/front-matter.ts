// The YAML lines at the top of a notebook: the core schema only, no tags, no merge keys, few aliases.
import { LineCounter, parseDocument } from "yaml";
import { type Problem, problem } from "../../core/base/index.ts";

export type FrontMatter = {
  readonly frontMatter: Readonly<Record<string, unknown>>;
  /** Offset in the file where the prose starts. */
  readonly end: number;
  readonly problems: readonly Problem[];
};

const LONGEST = 64 * 1024;
const MOST_ALIASES = 10;
const DEEPEST = 50;

const isTextList = (value: unknown): boolean => Array.isArray(value) && value.every((each) => typeof each === "string");
/** Keys that mean something, with what they have to hold. */
const KEYS: Readonly<Record<string, readonly [fits: (value: unknown) => boolean, says: string]>> = {
  title: [(value) => typeof value === "string", "title is a line of text"],
  records: [isTextList, "records is a list of names, [tops, instruments]"],
  written: [(value) => typeof value === "string" && /^\d{4}-\d{2}-\d{2}$/.test(value), "written is a date, 2026-03-14"],
  thumbrule: [(value) => value === 1, "this notebook is of a later form, and only form 1 is known here"],
};

/** How deep brackets stand in brackets, counted roughly: text in quotes counts too. */
function nesting(text: string): number {
  let now = 0;
  let most = 0;
  for (const mark of text) {
    if (mark === "[" || mark === "{") most = Math.max(most, ++now);
    else if (mark === "]" || mark === "}") now--;
  }
  return most;
}

/** An object without a prototype of its own, so that a key called `constructor` is a key. */
function bare(entries: Iterable<readonly [string, unknown]>): Readonly<Record<string, unknown>> {
  const made: Record<string, unknown> = Object.create(null);
  for (const [key, value] of entries) made[key] = value;
  return made;
}

/** The front matter of a file's text; none is an empty one. Never throws. */
export function frontMatter(text: string, file: string): FrontMatter {
  const start = text.startsWith("\ufeff") ? 1 : 0;
  const opening = /^---[ \t]*\r?\n/.exec(text.slice(start, start + 200))?.[0];
  if (opening === undefined) return { frontMatter: bare([]), end: start, problems: [] };
  const from = start + opening.length;
  const closing = /(?:^|\n)---[ \t]*(?:\r?\n|$)/.exec(text.slice(from, from + LONGEST));
  const wrong = (line: number, column: number, reason: string): Problem =>
    problem("front-matter", { reason }, { file, line, column, length: 1 });
  if (!closing)
    return { frontMatter: bare([]), end: start, problems: [wrong(1, 1, "a second line of three dashes is missing")] };
  const end = from + closing.index + closing[0].length;
  const source = text.slice(from, from + closing.index);
  if (nesting(source) > DEEPEST)
    return {
      frontMatter: bare([]),
      end,
      problems: [wrong(2, 1, `more than ${DEEPEST} brackets stand in one another`)],
    };
  try {
    const lineCounter = new LineCounter();
    const document = parseDocument(source, {
      schema: "core",
      merge: false,
      lineCounter,
      prettyErrors: false,
      logLevel: "silent",
    });
    const faults = [...document.errors, ...document.warnings].slice(0, 20).map((fault) => {
      const { line, col } = lineCounter.linePos(fault.pos[0]);
      return wrong(
        line + 1,
        col,
        fault.code === "TAG_RESOLVE_FAILED"
          ? "a tag (!) has no meaning here"
          : "this line is not YAML of the plain kind",
      );
    });
    if (faults.length > 0) return { frontMatter: bare([]), end, problems: faults };
    const value: unknown = document.toJS({ mapAsMap: true, maxAliasCount: MOST_ALIASES });
    if (value === null || value === undefined) return { frontMatter: bare([]), end, problems: [] };
    if (!(value instanceof Map))
      return { frontMatter: bare([]), end, problems: [wrong(2, 1, "each line is a name, a colon and a value")] };
    const lines = source.split("\n");
    const problems: Problem[] = [];
    const kept: [string, unknown][] = [];
    for (const [key, each] of value as Map<unknown, unknown>) {
      const rule = typeof key === "string" && Object.hasOwn(KEYS, key) ? KEYS[key] : undefined;
      if (rule && !rule[0](each))
        problems.push(
          wrong(
            Math.max(
              0,
              lines.findIndex((line) => line.trimStart().startsWith(`${String(key)}`)),
            ) + 2,
            1,
            rule[1],
          ),
        );
      else if (typeof key === "string")
        kept.push([key, each instanceof Map ? bare([...each].map(([inner, held]) => [String(inner), held])) : each]);
    }
    return { frontMatter: bare(kept), end, problems };
  } catch {
    return { frontMatter: bare([]), end, problems: [wrong(2, 1, "it repeats itself or nests too deeply")] };
  }
}
