// Where the parts of a notebook file stand: its title, the end of its front matter, its fenced blocks. What the YAML and Markdown
// readers are needed for, and nothing else; a dated copy carries it, so that its reader needs neither.
import { limits, type Problem, problem } from "../../core/base/index.ts";
import { type FencedBlock, fencedBlocks } from "./fenced-blocks.ts";
import { frontMatter } from "./front-matter.ts";
import { lineCounter } from "./line-counter.ts";
import { DEEPEST_MARKDOWN, markdownNesting } from "./markdown-nesting.ts";

export type NotebookOutline = {
  readonly title: string;
  /** Offset in the file where the prose starts. */
  readonly end: number;
  readonly blocks: readonly FencedBlock[];
  /** Problems of the file itself. */
  readonly problems: readonly Problem[];
};

type Outlined = NotebookOutline & { readonly frontMatter: Readonly<Record<string, unknown>> };

/** The outline of a file's text with its front matter. Never throws. */
export function notebookOutline(text: string, file: string): Outlined {
  const top = { file, line: 1, column: 1, length: 1 };
  const { value: most, words } = limits.notebookBytes;
  if (text.length > most) {
    const problems = [problem("limit", { what: words, limit: `${most}`, found: `${text.length}` }, top)];
    return { title: "", end: text.length, blocks: [], problems, frontMatter: Object.create(null) };
  }
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
  return {
    title: typeof front.frontMatter.title === "string" ? front.frontMatter.title : "",
    end: front.end,
    blocks: fencedBlocks(text, front.end, tooDeep < 0 ? text.length : tooDeep),
    problems,
    frontMatter: front.frontMatter,
  };
}
