import type { EntryResult, NotebookResult } from "../../notebook/engine/index.ts";
import { type Command, textOption, UsageError } from "../command.ts";
import { entryText } from "../entry-text.ts";
import { openNotebook } from "../open-notebook.ts";
import { problemLines } from "../problem-lines.ts";

/** An entry as programs get it: finding, value, table or problem. */
const entryJson = ({ name, kind, line, finding, value, table, problems }: EntryResult): unknown => ({
  name,
  kind,
  line,
  ...(finding ? { finding } : {}),
  ...(value ? { value } : {}),
  ...(table ? { table } : {}),
  ...(problems.length > 0 ? { problem: problems[0], problems } : {}),
});

const text = (result: NotebookResult): string =>
  [
    result.title,
    ...result.entries.map(entryText),
    ...(result.problems.length > 0 ? [problemLines(result.problems)] : []),
  ]
    .filter((part) => part !== "")
    .join("\n\n");

const isDate = (given: string): boolean =>
  /^\d{4}-\d\d-\d\d$/.test(given) && !Number.isNaN(Date.parse(`${given}T00:00:00Z`));

/** Every entry's finding. */
export const report: Command = {
  name: "report",
  usage: "NOTEBOOK [--as-of DATE]",
  sentence: "Every entry's finding; text for people, JSON for programs.",
  options: { "as-of": { type: "string" } },
  files: [1, 1],
  run: async (given, surface) => {
    const asOf = textOption(given, "as-of") ?? null;
    if (asOf !== null && !isDate(asOf)) throw new UsageError("--as-of needs a date, as year-month-day");
    const opened = await openNotebook(given.files[0] ?? "", surface, { asOf });
    if (!opened.ok) return opened.answer;
    const result = opened.engine.result();
    opened.engine.dispose();
    const { notebook, title, version, entries, problems } = result;
    return {
      code: problems.length > 0 ? 1 : 0,
      text: text(result),
      json: {
        notebook,
        title,
        asOf,
        version,
        entries: entries.map(entryJson),
        ...(problems.length > 0 ? { problems } : {}),
      },
    };
  },
};
