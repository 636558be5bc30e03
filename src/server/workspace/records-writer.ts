// What changes a record file: lines added to its log, and the edited file written over it.
import { basename, dirname, join } from "node:path";
import {
  changedReading,
  type EditLogLine,
  fileBehind,
  fileMark,
  type LineHead,
  plannedLines,
  printedLogLine,
  type RecordEdit,
  type RecordsProblem,
  writingStep,
} from "../../core/records/index.ts";
import { editsPath } from "../../notebook/engine/index.ts";
import { appendToLog } from "./append-to-log.ts";
import { digest } from "./digest.ts";
import { keepBeside } from "./keep-beside.ts";
import { type OpenedRecords, withLog } from "./opened-records.ts";
import { keptName } from "./remove-leftovers.ts";
import { type SavingFiles, saveFile } from "./save-file.ts";

/** The file as it is afterwards, or why nothing was done; a disk that fails is thrown. */
export type Written =
  | { readonly done: true; readonly opened: OpenedRecords }
  | { readonly done: false; readonly because: "refused"; readonly problem: RecordsProblem; readonly theirs: string }
  | { readonly done: false; readonly because: "stale"; readonly theirs: string };

export type RecordsWriter = {
  readonly edit: (opened: OpenedRecords, id: string, edits: readonly RecordEdit[]) => Promise<Written>;
  readonly write: (opened: OpenedRecords, id: string) => Promise<Written>;
  /** Says in the log that a writing had come about, where the program was stopped before it could. */
  readonly confirmed: (opened: OpenedRecords) => Promise<OpenedRecords>;
};

/** The log with lines added, not on the disk yet. */
function withLines(opened: OpenedRecords, lines: readonly EditLogLine[]): Promise<OpenedRecords> {
  const text = new TextEncoder().encode(lines.map(printedLogLine).join(""));
  return withLog({ ...opened, logBytes: Buffer.concat([opened.logBytes.subarray(0, opened.log.whole), text]) });
}

/** A writer in a folder. `now`: the clock. */
export function recordsWriter(folder: string, now: () => Date, disk: SavingFiles): RecordsWriter {
  const pathOf = (file: string) => join(folder, ...file.split("/"));
  const day = () => now().toISOString().slice(0, 10);
  const head = ({ log, bytes, options, state }: OpenedRecords, id: string): LineHead => ({
    time: now().toISOString(),
    id,
    base: fileBehind(bytes, options, state.behind).mark(),
    lastSeq: log.lines.at(-1)?.seq ?? 0,
  });
  const line = (opened: OpenedRecords, id: string, step: Pick<EditLogLine, "what">): EditLogLine => {
    const { lastSeq, ...rest } = head(opened, id);
    return { v: 1, seq: lastSeq + 1, ...rest, ...step } as EditLogLine;
  };

  async function appended(before: OpenedRecords, after: OpenedRecords): Promise<OpenedRecords> {
    const { whole } = before.log;
    const end = { known: before.logBytes, whole, day: day() };
    await appendToLog(pathOf(editsPath(before.file)), after.logBytes.subarray(whole), end, disk);
    return after;
  }

  return {
    edit: async (opened, id, edits) => {
      const refused = (problem: RecordsProblem): Written => ({
        done: false,
        because: "refused",
        problem,
        theirs: opened.digest,
      });
      const planned = plannedLines(opened.state, edits, head(opened, id));
      if (!planned.ok) return refused(planned.problem);
      const next = await withLines(opened, planned.lines);
      const problem = changedReading(opened.state, next.state, planned.lines);
      return problem ? refused(problem) : { done: true, opened: await appended(opened, next) };
    },
    // The log says first what will be written, then the file is replaced, then the log says that it was: cut off anywhere, one of both tells.
    write: async (opened, id) => {
      const { file, bytes, state } = opened;
      const step = writingStep(state, opened.options);
      if (step === null) return { done: true, opened };
      const announced = await appended(opened, await withLines(opened, [line(opened, id, step)]));
      const kept = keptName(basename(pathOf(file)), day(), digest(bytes));
      await keepBeside(disk, join(dirname(pathOf(file)), kept), bytes);
      const outcome = await saveFile(pathOf(file), state.bytes, digest(bytes), disk);
      if (!outcome.saved && outcome.because === "failed") throw outcome.error;
      if (!outcome.saved) return { done: false, because: "stale", theirs: announced.digest };
      const replaced = { ...announced, bytes: state.bytes };
      const said = await withLines(replaced, [line(replaced, id, { what: "written" })]);
      return { done: true, opened: await appended(replaced, said) };
    },
    confirmed: async (opened) => {
      const last = opened.log.lines.at(-1);
      if (last?.what !== "writing" || last.mark !== fileMark(opened.bytes)) return opened;
      return appended(opened, await withLines(opened, [line(opened, last.id, { what: "written" })]));
    },
  };
}
