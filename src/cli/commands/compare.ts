import { compareCopies, copyFromBytes } from "../../notebook/share/index.ts";
import type { Command } from "../command.ts";
import { missingFile, problemAnswer } from "../open-notebook.ts";

/** What changed between two dated copies. */
export const compare: Command = {
  name: "compare",
  usage: "A B",
  sentence: "What changed between two dated copies.",
  options: {},
  files: [2, 2],
  run: async ({ files: [first = "", second = ""] }, surface) => {
    const [a, b] = await Promise.all([surface.read(first), surface.read(second)]);
    if (a === null) return missingFile(first);
    if (b === null) return missingFile(second);
    const [before, after] = [copyFromBytes(a), copyFromBytes(b)];
    if (before.copy === null || after.copy === null) {
      return problemAnswer([
        ...before.problems.map((each) => ({ ...each, file: first })),
        ...after.problems.map((each) => ({ ...each, file: second })),
      ]);
    }
    const comparison = compareCopies(before.copy, after.copy);
    const text = comparison.same
      ? "The two copies say the same."
      : comparison.changes.map((each) => `${each.entry}: ${each.what}: ${each.before} -> ${each.after}`).join("\n");
    return { code: 0, json: comparison, text };
  },
};
