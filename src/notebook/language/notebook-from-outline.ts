// A notebook out of its text and its outline: prose and entries in file order, each with its place.
import { limits, type Problem, problem } from "../../core/base/index.ts";
import { entryFromBlock } from "./entry-from-block.ts";
import { lineCounter } from "./line-counter.ts";
import type { Entry, Notebook } from "./notebook.ts";
import type { NotebookOutline } from "./notebook-outline.ts";

/** A notebook read by an outline of its own text. Never throws. */
export function notebookFromOutline(text: string, file: string, outline: NotebookOutline): Notebook {
  const problems: Problem[] = [...outline.problems];
  const parts: Notebook["parts"][number][] = [];
  const entries: Entry[] = [];
  const taken = new Set<string>();
  const placed = new Map<string, number>();
  const lineAt = lineCounter(text);
  let at = outline.end;
  const prose = (to: number): void => {
    const stretch = text.slice(at, to);
    if (stretch.trim() !== "") parts.push({ is: "prose", prose: { line: lineAt(at), from: at, to, text: stretch } });
    at = to;
  };
  for (const block of outline.blocks) {
    if (entries.length >= limits.entries.value) {
      const facts = { what: limits.entries.words, limit: `${limits.entries.value}`, found: "more" };
      problems.push(problem("limit", facts, { file, line: block.line, column: 1, length: 1 }));
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
  const frontMatter = Object.create(null) as Readonly<Record<string, unknown>>;
  return { text, title: outline.title, frontMatter, parts, entries, problems };
}
