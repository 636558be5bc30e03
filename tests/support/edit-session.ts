// A file and its log in memory, edited as the service edits them.
import {
  changedReading,
  type EditedRecords,
  editedRecords,
  editLogFromBytes,
  fileMark,
  plannedLines,
  printedLogLine,
  type ReadOptions,
  type RecordEdit,
  type RecordsProblem,
} from "../../src/core/records/index.ts";

export type EditSession = {
  readonly bytes: Uint8Array;
  readonly log: string;
  readonly state: EditedRecords;
};

/** The file with the edits of a log. */
export async function openedSession(
  bytes: Uint8Array,
  log = "",
  options: ReadOptions = {},
  before?: EditedRecords,
): Promise<EditSession> {
  const read = editLogFromBytes(new TextEncoder().encode(log));
  return { bytes, log, state: await editedRecords(bytes, "a.csv", options, read, {}, before) };
}

/** The session after a request, or why it was refused. */
export async function edited(
  { bytes, log, state }: EditSession,
  ...edits: readonly RecordEdit[]
): Promise<EditSession | RecordsProblem> {
  const head = {
    time: "2026-03-14T10:00:00.000Z",
    id: `r${log.length}`,
    base: fileMark(bytes),
    lastSeq: editLogFromBytes(new TextEncoder().encode(log)).lines.at(-1)?.seq ?? 0,
  };
  const planned = plannedLines(state, edits, head);
  if (!planned.ok) return planned.problem;
  const next = await openedSession(
    bytes,
    log + planned.lines.map(printedLogLine).join(""),
    state.behind.options,
    state,
  );
  return changedReading(state, next.state, planned.lines) ?? next;
}

/** The session after requests that must all be taken. */
export async function editedWell(session: EditSession, ...requests: readonly RecordEdit[]): Promise<EditSession> {
  let now = session;
  for (const edit of requests) {
    const next = await edited(now, edit);
    if ("code" in next) throw new Error(`${next.code}: ${next.sentence}`);
    now = next;
  }
  return now;
}
