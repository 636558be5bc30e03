// The fenced blocks of a text, found by the Markdown rules, with their places in the file.
import { fromMarkdown } from "mdast-util-from-markdown";

export type FencedBlock = {
  /** Offsets in the file: the whole block; its body without the line break before the closing fence. */
  readonly from: number;
  readonly to: number;
  readonly bodyFrom: number;
  readonly bodyTo: number;
  /** Line of the fence and of the body's first line, from 1; the same where the file ends with the fence. */
  readonly line: number;
  readonly bodyLine: number;
  /** What stands behind the opening fence. */
  readonly info: string;
  readonly infoFrom: number;
  readonly fence: string;
  readonly closed: boolean;
};

/** What stands inside a line does not matter here, so it is not read: blocks only. */
const BLOCKS_ONLY = {
  disable: {
    null: [
      "attention",
      "autolink",
      "codeText",
      "htmlText",
      "labelStartImage",
      "labelStartLink",
      "labelEnd",
      "characterEscape",
      "characterReference",
      "hardBreakEscape",
      "definition",
    ],
  },
};

/** Blocks at the top level of the text from `start` to `end`; those inside lists and quotations are prose. */
export function fencedBlocks(text: string, start: number, end: number): readonly FencedBlock[] {
  const tree = fromMarkdown(text.slice(start, end), { extensions: [BLOCKS_ONLY] });
  let line = 1;
  let counted = 0;
  return tree.children.flatMap((node): readonly FencedBlock[] => {
    if (node.type !== "code") return [];
    const first = start + (node.position?.start.offset ?? 0);
    const to = start + (node.position?.end.offset ?? 0);
    const opening = /^(`{3,}|~{3,})([^\r\n]*)(\r\n|\n|\r|$)/.exec(text.slice(first, to));
    if (!opening) return [];
    for (; counted < first; counted++) if (text.charCodeAt(counted) === 10) line++;
    const [head = "", fence = "", info = ""] = opening;
    const bodyFrom = first + head.length;
    const lastBreak = Math.max(text.lastIndexOf("\n", to - 1), bodyFrom - 1);
    const lastLine = text.slice(lastBreak + 1, to).trim();
    const closed =
      lastBreak + 1 >= bodyFrom &&
      lastBreak >= first &&
      lastLine.length >= fence.length &&
      lastLine === (fence[0] ?? "`").repeat(lastLine.length);
    const bodyEnd = closed ? lastBreak + 1 : to;
    const bodyTo =
      closed && bodyEnd > bodyFrom
        ? bodyEnd - (text.slice(bodyEnd - 2, bodyEnd) === "\r\n" && bodyEnd - 2 >= bodyFrom ? 2 : 1)
        : bodyEnd;
    return [
      {
        from: first,
        to,
        bodyFrom,
        bodyTo,
        line,
        info: info.trim(),
        infoFrom: first + fence.length + (info.length - info.trimStart().length),
        fence,
        closed,
        bodyLine: /[\r\n]$/.test(head) ? line + 1 : line,
      },
    ];
  });
}
