// A notebook's text with a table's entry at its end, under a name that is free in it.
import type { PageData } from "../../notebook/share/index.ts";

/** The text with the entry added. entry: a whole fenced block whose first line is "```records NAME". */
export function withRecordsEntry({ text, result }: Pick<PageData, "text" | "result">, entry: string): string {
  const taken = new Set(result.entries.map(({ name }) => name));
  const wanted = /^```records (\S+)/.exec(entry)?.[1] ?? "records";
  let name = wanted;
  for (let count = 2; taken.has(name); count++) name = `${wanted}_${count}`;
  const end = text.includes("\r\n") ? "\r\n" : "\n";
  const block = entry.replace(/^```records \S+/, `\`\`\`records ${name}`).replaceAll("\n", end);
  return `${text}${text === "" || text.endsWith("\n") ? "" : end}${end}${block}`;
}
