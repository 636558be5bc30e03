// The text of one part as it is edited, and the whole file's text with that part replaced. Line ends and blank edges stay as they were.
import type { PagePart } from "../../notebook/share/index.ts";

export type Place = Pick<PagePart, "is" | "from" | "to">;
const isEdge = (character: string | undefined) => character === "\n" || character === "\r";

type Stretch = Pick<Place, "from" | "to">;

function inner(text: string, { from, to }: Stretch): Stretch {
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

/** What is put at the end of a file for a new entry of a kind, and where its empty body will lie in the whole. */
export function newEntry(text: string, kind: string): { readonly text: string; readonly place: Place } {
  const end = text.includes("\r\n") ? "\r\n" : "\n";
  const head = `${text}${text === "" || text.endsWith("\n") ? "" : end}${end}\`\`\`${kind}${end}`;
  return { text: `${head}${end}\`\`\`${end}`, place: { is: "entry", from: head.length, to: head.length } };
}

/** A line of backquotes or tildes alone would end the entry; indented by four it is a line like any other. */
const inEntry = (body: string): string => body.replace(/^ {0,3}(`{3,}|~{3,})[ \t]*$/gm, "    $1");

/** The file's text with a part's text replaced; everything outside stays as it is, to the byte. */
export function withPartText(text: string, place: Place, body: string): string {
  const { from, to } = inner(text, place);
  const written = (place.is === "entry" ? inEntry : String)(body.replaceAll("\r\n", "\n"));
  const ends = text.includes("\r\n") ? written.replaceAll("\n", "\r\n") : written;
  return text.slice(0, from) + ends + text.slice(to);
}
