import { readFileSync } from "node:fs";

/** One case: its name, the text, what comes out. */
export type Case = { readonly name: string; readonly text: string; readonly expected: string };

/** The cases of tests/cases/NAME: `# name`, text, `==>`, what comes out, a blank line. */
export function caseFile(name: string): readonly Case[] {
  const text = readFileSync(new URL(`../cases/${name}`, import.meta.url), "utf8");
  return text
    .split(/^# /m)
    .slice(1)
    .map((block) => {
      const [head = "", ...rest] = block.split("\n");
      const body = rest.join("\n");
      const at = body.indexOf("\n==>\n");
      if (at < 0) throw new Error(`the case ${head} has no ==>`);
      return { name: head.trim(), text: body.slice(0, at).replace(/^\n+/, ""), expected: body.slice(at + 5).trim() };
    });
}
