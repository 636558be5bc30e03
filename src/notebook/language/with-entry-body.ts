// One entry edited: every byte outside it stays as it was.
import { Defect } from "../../core/base/index.ts";
import type { Notebook } from "./notebook.ts";

/** The text with another body for one entry. body: with any line ends; it takes over those of the file. */
export function withEntryBody({ text, entries }: Notebook, name: string, body: string): string {
  const entry = entries.find((each) => each.name === name);
  if (!entry) throw new Defect(`no entry ${name}`);
  const lineEnd = text.includes("\r\n") ? "\r\n" : "\n";
  const lines = body.replace(/\r\n?/g, "\n").replace(/\n$/, "").split("\n");
  // A line of backquotes would end the entry; indented by four it is a line like any other.
  const kept = lines
    .map((line) => (/^ {0,3}(?:`{3,}|~{3,})\s*$/.test(line) ? `    ${line.trim()}` : line))
    .join(lineEnd);
  const after = text.slice(entry.bodyTo);
  const gap = entry.bodyTo === entry.bodyFrom && kept !== "" && !/^\r?\n/.test(after) && after !== "" ? lineEnd : "";
  return `${text.slice(0, entry.bodyFrom)}${kept}${gap}${after}`;
}
