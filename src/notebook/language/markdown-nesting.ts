// Where quotations and lists stand in one another more deeply than anyone writes: reading on would take ever longer.

/** Quotations and lists in one another. */
export const DEEPEST_MARKDOWN = 100;
/** A list item that starts further right than this stands in more lists than that, or is no list item. */
const FURTHEST = 3 * DEEPEST_MARKDOWN;

/** How many containers the line that starts at `from` opens or goes on with. */
function depthOf(text: string, from: number): number {
  let depth = 0;
  for (let at = from; at < text.length && depth <= DEEPEST_MARKDOWN; at++) {
    const mark = text[at];
    if (mark === " " || mark === "\t") continue;
    const next = text[at + 1] ?? "\n";
    const isItem = (mark === "-" || mark === "*" || mark === "+") && /\s/.test(next);
    const number =
      mark !== undefined && mark >= "0" && mark <= "9"
        ? /^\d{1,9}[.)](?=\s|$)/.exec(text.slice(at, at + 11))?.[0]
        : undefined;
    if (mark !== ">" && !isItem && number === undefined) break;
    if (at - from > FURTHEST) return DEEPEST_MARKDOWN + 1;
    at += (number?.length ?? 1) - 1;
    depth++;
    if (next === "\n") break;
  }
  return depth;
}

/** Offset of the first line that nests too deeply, from `start` on; -1 if there is none. */
export function markdownNesting(text: string, start: number): number {
  for (let from = start; from < text.length; ) {
    if (depthOf(text, from) > DEEPEST_MARKDOWN) return from;
    const end = text.indexOf("\n", from);
    if (end < 0) return -1;
    from = end + 1;
  }
  return -1;
}
