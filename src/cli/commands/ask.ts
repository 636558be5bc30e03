import { basename } from "node:path";
import { columnName } from "../../core/columns/index.ts";
import { createNotebookEngine } from "../../notebook/engine/index.ts";
import { type Command, textOptions, UsageError } from "../command.ts";
import { findingText } from "../entry-text.ts";
import { missingFile, problemAnswer } from "../open-notebook.ts";

/** A notebook of one question; the fence is longer than any in the sentence, so the sentence cannot end it. */
function notebookOf(sentence: string, files: readonly string[]): string {
  const longest = Math.max(2, ...[...sentence.matchAll(/`+/g)].map((found) => found[0].length));
  const fence = "`".repeat(longest + 1);
  const names = new Set<string>();
  const tables = files.map((file) => {
    let name = columnName(basename(file).replace(/\.[^.]*$/, "")) || "records";
    while (names.has(name)) name += "_2";
    names.add(name);
    return `\`\`\`records ${name}\nfrom ${/\s/.test(file) ? `"${file}"` : file}\n\`\`\`\n`;
  });
  return `${tables.join("\n")}\n${fence}question asked\n${sentence}\n${fence}\n`;
}

/** One question without a notebook. */
export const ask: Command = {
  name: "ask",
  usage: '"SENTENCE" --records FILE…',
  sentence: "One question without a notebook.",
  options: { records: { type: "string", multiple: true } },
  files: [1, 1000],
  run: async (given, surface) => {
    const [sentence = "", ...more] = given.files;
    const files = [...textOptions(given, "records"), ...more];
    if (files.length === 0) throw new UsageError("ask needs --records FILE");
    for (const file of files) if ((await surface.read(file)) === null) return missingFile(file);
    const engine = createNotebookEngine({
      readFile: surface.read,
      schedule: setImmediate,
      asOf: null,
      version: surface.version,
    });
    engine.update(notebookOf(sentence.replace(/\r?\n/g, " "), files), "");
    await engine.settled();
    const result = engine.result();
    engine.dispose();
    const finding = result.entries.find((entry) => entry.name === "asked")?.finding;
    if (finding) return { code: 0, json: { finding }, text: findingText(finding) };
    // Places count within the sentence: that is all the asker wrote.
    const asked = result.entries.find((entry) => entry.name === "asked");
    return problemAnswer(
      (asked && asked.problems.length > 0 ? asked.problems : result.problems).map(
        ({ file: _, line: __, ...problem }) => ({ ...problem, line: 1 }),
      ),
    );
  },
};
