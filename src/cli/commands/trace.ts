import { problems, type TraceCell, type TraceStep } from "../../core/base/index.ts";
import { nearestName } from "../../core/formula/index.ts";
import type { EntryResult } from "../../notebook/engine/index.ts";
import type { Command } from "../command.ts";
import { openNotebook, problemAnswer } from "../open-notebook.ts";

function shownValue(entry: EntryResult): unknown {
  if (entry.value) return entry.value;
  const first = entry.finding && entry.finding.kind !== "refused" ? entry.finding.estimate[0] : undefined;
  return first ? { value: first.value, unit: first.unit } : null;
}

const editOf = ({ before }: TraceCell): string =>
  before === undefined ? "" : before === null ? " (added by an edit)" : ` (edited; the file has "${before}")`;

const stepText = (step: TraceStep): string =>
  [
    `${step.what}: ${step.says}`,
    ...(step.formula === undefined ? [] : [`  ${step.column ?? ""} = ${step.formula}`]),
    ...(step.cells ?? []).map(
      (cell) =>
        `  ${cell.file} row ${cell.row} column ${cell.col} (${cell.column}): "${cell.raw}" read as ${cell.reading}${editOf(cell)}`,
    ),
  ].join("\n");

/** A number back to raw cells. */
export const trace: Command = {
  name: "trace",
  usage: "NOTEBOOK ENTRY",
  sentence: "A number back to the raw cells it rests on.",
  options: {},
  files: [2, 2],
  run: async ({ files: [file = "", name = ""] }, surface) => {
    const opened = await openNotebook(file, surface);
    if (!opened.ok) return opened.answer;
    const result = opened.engine.result();
    const entry =
      result.entries.find((each) => each.name === name && (each.finding || each.value)) ??
      result.entries.find((each) => each.name === name);
    if (!entry) {
      const suggestion = nearestName(
        name,
        result.entries.map((each) => each.name),
      );
      return problemAnswer([
        {
          code: "unknown-name",
          sentence: problems["unknown-name"]({ name }),
          file,
          ...(suggestion ? { suggestion } : {}),
        },
      ]);
    }
    const { steps } = opened.engine.trace(name);
    opened.engine.dispose();
    return {
      code: 0,
      json: { entry: name, value: shownValue(entry), steps },
      text: [entry.asked.trim(), ...steps.map(stepText)].join("\n"),
    };
  },
};
