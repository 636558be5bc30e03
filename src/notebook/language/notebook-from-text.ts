// A notebook file read: front matter, prose and entries in file order, each with its place.
import { limits, type Problem, problem } from "../../core/base/index.ts";
import { entryFromBlock } from "./entry-from-block.ts";
import { fencedBlocks } from "./fenced-blocks.ts";
import { frontMatter } from "./front-matter.ts";
import { DEEPEST_MARKDOWN, markdownNesting } from "./markdown-nesting.ts";
import type { Entry, Notebook } from "./notebook.ts";

/** How many lines `text` has before `offset`, plus one. */
function lineCounter(text: string): (offset: number) => number {
  let line = 1;
  let at = 0;
  return (offset) => {
    for (; at < offset; at++) if (text.charCodeAt(at) === 10) line++;
    return line;
  };
}

/** A notebook read. text: the file as it is, either line end; file: its path, for the places of problems. Never throws. */
export function notebookFromText(text: string, file: string): Notebook {
  const empty = {
    text,
    title: "",
    frontMatter: Object.create(null) as Readonly<Record<string, unknown>>,
    parts: [],
    entries: [],
  };
  const top = { file, line: 1, column: 1, length: 1 };
  if (text.length > limits.notebookBytes.value)
    return {
      ...empty,
      problems: [
        problem(
          "limit",
          { what: limits.notebookBytes.words, limit: `${limits.notebookBytes.value}`, found: `${text.length}` },
          top,
        ),
      ],
    };
  const front = frontMatter(text, file);
  const problems: Problem[] = [...front.problems];
  const tooDeep = markdownNesting(text, front.end);
  if (tooDeep >= 0)
    problems.push(
      problem(
        "limit",
        { what: "lists and quotations inside one another", limit: `${DEEPEST_MARKDOWN}`, found: "more" },
        { ...top, line: lineCounter(text)(tooDeep) },
      ),
    );
  const found = fencedBlocks(text, front.end, tooDeep < 0 ? text.length : tooDeep);
  const parts: Notebook["parts"][number][] = [];
  const entries: Entry[] = [];
  const taken = new Set<string>();
  const placed = new Map<string, number>();
  const lineAt = lineCounter(text);
  let at = front.end;
  const prose = (to: number): void => {
    const stretch = text.slice(at, to);
    if (stretch.trim() !== "") parts.push({ is: "prose", prose: { line: lineAt(at), from: at, to, text: stretch } });
    at = to;
  };
  for (const block of found) {
    if (entries.length >= limits.entries.value) {
      problems.push(
        problem(
          "limit",
          { what: limits.entries.words, limit: `${limits.entries.value}`, found: "more" },
          { ...top, line: block.line },
        ),
      );
      break;
    }
    const entry = entryFromBlock(text, file, block, taken, placed);
    if (entry === null) continue;
    prose(block.from);
    parts.push({ is: "entry", entry });
    entries.push(entry);
    at = block.to + (/^\r?\n/.exec(text.slice(block.to, block.to + 2))?.[0].length ?? 0);
  }
  prose(text.length);
  const title = typeof front.frontMatter.title === "string" ? front.frontMatter.title : "";
  return { text, title, frontMatter: front.frontMatter, parts, entries, problems };
}
