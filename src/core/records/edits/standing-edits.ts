// Which edits of a log stand: those since the last writing into the file that were not taken back.
import type { CarriedAside, EditLogLine, LoggedEdit } from "./edit-log-line.ts";

export type StandingEdit = EditLogLine & LoggedEdit;
/** `undo`, `redo`: the edit that each would be about, null where there is none. `carried`: rows set aside before the last writing. */
export type StandingEdits = {
  readonly edits: readonly StandingEdit[];
  readonly carried: readonly CarriedAside[];
  readonly undo: number | null;
  readonly redo: number | null;
};

const isEdit = (line: EditLogLine): line is StandingEdit =>
  line.what === "cell" || line.what === "set-aside" || line.what === "bring-back" || line.what === "add";

/**
 * Where the last writing into the file stands that came about, -1 if there was none. It is confirmed by the line after it; where that is
 * still missing, the file has the mark of the writing or was never replaced. `mark`: of the file as it is now.
 */
const lastWriting = (lines: readonly EditLogLine[], mark: string): number =>
  lines.findLastIndex(
    (line, at) =>
      line.what === "writing" && (at === lines.length - 1 ? line.mark === mark : lines[at + 1]?.what === "written"),
  );

/** The edits that stand. Undo takes back the last of them, redo the last one taken back, until a new edit is made. */
export function standingEdits(lines: readonly EditLogLine[], mark: string): StandingEdits {
  const writing = lastWriting(lines, mark);
  const start = lines[writing];
  const open = new Set(start?.what === "writing" ? start.open : []);
  const since = lines.filter((line, at) => at > writing || open.has(line.seq));
  const done: StandingEdit[] = [];
  let undone: StandingEdit[] = [];
  for (const line of since) {
    if (isEdit(line)) {
      done.push(line);
      undone = [];
    } else if (line.what === "undo" || line.what === "redo") {
      const [from, to] = line.what === "undo" ? [done, undone] : [undone, done];
      const at = from.findLastIndex(({ seq }) => seq === line.edit);
      if (at >= 0) to.push(...from.splice(at, 1));
    }
  }
  return {
    edits: done,
    carried: start?.what === "writing" ? start.aside : [],
    undo: done.at(-1)?.seq ?? null,
    redo: undone.at(-1)?.seq ?? null,
  };
}
