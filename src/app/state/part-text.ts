// The text of one part as it is edited, and the whole file's text with that part replaced. Line ends and blank edges stay as they were.
import type { PagePart } from "../../notebook/share/index.ts";

type Place = Pick<PagePart, "from" | "to">;
const isEdge = (character: string | undefined) => character === "\n" || character === "\r";

function inner(text: string, { from, to }: Place): Place {
  let [start, end] = [from, to];
  while (start < end && isEdge(text[start])) start++;
  while (end > start && isEdge(text[end - 1])) end--;
  return { from: start, to: end };
}

/** The part's text without its blank edges, with line feeds. */
export function partText(text: string, place: Place): string {
  const { from, to } = inner(text, place);
  return text.slice(from, to).replaceAll("\r\n", "\n");
}

/** The file's text with a part's text replaced; everything outside stays as it is, to the byte. */
export function withPartText(text: string, place: Place, body: string): string {
  const { from, to } = inner(text, place);
  const ends = text.includes("\r\n") ? body.replaceAll("\r\n", "\n").replaceAll("\n", "\r\n") : body;
  return text.slice(0, from) + ends + text.slice(to);
}
