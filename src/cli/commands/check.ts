import type { Command } from "../command.ts";
import { openNotebook } from "../open-notebook.ts";
import { problemLines } from "../problem-lines.ts";

/** Language, types and units of a notebook: every problem at its place. */
export const check: Command = {
  name: "check",
  usage: "NOTEBOOK",
  sentence: "Language, types and units: file:line:column code sentence.",
  options: {},
  files: [1, 1],
  run: async ({ files }, surface) => {
    const opened = await openNotebook(files[0] ?? "", surface);
    if (!opened.ok) return opened.answer;
    const { problems } = opened.engine.result();
    opened.engine.dispose();
    return {
      code: problems.length > 0 ? 1 : 0,
      json: { problems },
      text: problems.length > 0 ? problemLines(problems) : "No problems.",
    };
  },
};
