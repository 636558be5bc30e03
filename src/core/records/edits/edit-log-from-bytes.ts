// The log as it lies on the disk: every line that is whole counts, what is damaged is said, a tail without its line end was never acknowledged.
import type { CarriedAside, EditLogLine, RecordAnchor } from "./edit-log-line.ts";
import { lineSum } from "./edit-log-line.ts";
import { editProblem } from "./edit-problems.ts";
import type { RecordsProblem } from "./records-page.ts";

/** `whole`: bytes up to the last line end; what comes after is a torn tail. `newer`: a later version wrote here, so nothing may be added. */
export type EditLog = {
  readonly lines: readonly EditLogLine[];
  readonly problems: readonly RecordsProblem[];
  readonly whole: number;
  readonly newer: boolean;
};

const SUM = /,"sum":"([0-9a-f]{8})"\}$/;
const LF = 10;

type Parts = Readonly<Record<string, unknown>>;
const isText = (value: unknown): value is string => typeof value === "string";
const isCount = (value: unknown): value is number => Number.isSafeInteger(value) && (value as number) >= 0;
const isParts = (value: unknown): value is Parts =>
  typeof value === "object" && value !== null && !Array.isArray(value);
const isAnchor = (value: unknown): value is RecordAnchor =>
  isParts(value) && (isCount(value.added) || (isCount(value.record) && isText(value.text)));
const isAside = (value: unknown): value is CarriedAside =>
  isParts(value) && isCount(value.table) && isAnchor(value.row) && isText(value.reason);
const aboutRow = ({ table, row }: Parts) => isCount(table) && isAnchor(row);

/** What each sort of line has besides its head. */
const shapes: { readonly [W in EditLogLine["what"]]: (parts: Parts) => boolean } = {
  cell: (parts) => aboutRow(parts) && isCount(parts.place) && isText(parts.before) && isText(parts.after),
  "set-aside": (parts) => aboutRow(parts) && isText(parts.reason),
  "bring-back": aboutRow,
  add: (parts) => aboutRow(parts) && Array.isArray(parts.fields) && parts.fields.every(isText),
  undo: ({ edit }) => isCount(edit),
  redo: ({ edit }) => isCount(edit),
  writing: ({ mark, aside, open }) =>
    isText(mark) && Array.isArray(aside) && aside.every(isAside) && Array.isArray(open) && open.every(isCount),
  written: () => true,
};

const isLine = (parts: Parts): boolean =>
  isCount(parts.seq) &&
  isText(parts.time) &&
  isText(parts.id) &&
  isText(parts.base) &&
  isText(parts.what) &&
  Object.hasOwn(shapes, parts.what) &&
  shapes[parts.what as EditLogLine["what"]](parts);

/** The line in a text, "newer" for one of a later version, null where it is damaged. */
function lineFromText(text: string): EditLogLine | "newer" | null {
  const sum = SUM.exec(text.slice(-18))?.[1];
  if (sum === undefined || lineSum(`${text.slice(0, -18)}}`) !== sum) return null;
  let parts: unknown;
  try {
    parts = JSON.parse(text);
  } catch {
    return null;
  }
  if (!isParts(parts)) return null;
  if (parts.v !== 1) return typeof parts.v === "number" && parts.v > 1 ? "newer" : null;
  if (!isLine(parts)) return null;
  const { sum: _, ...line } = parts;
  return line as unknown as EditLogLine;
}

/** The edits of a log, and what is wrong with it. A line whose number does not follow is damage as well. Time grows with its length. */
export function editLogFromBytes(bytes: Uint8Array): EditLog {
  const decoder = new TextDecoder("utf-8", { ignoreBOM: true });
  const [lines, problems]: [EditLogLine[], RecordsProblem[]] = [[], []];
  let newer = false;
  let start = 0;
  let number = 0;
  for (let end = bytes.indexOf(LF); end >= 0; end = bytes.indexOf(LF, start)) {
    number++;
    const line = lineFromText(decoder.decode(bytes.subarray(start, end)));
    if (line === "newer") {
      newer = true;
      problems.push(editProblem("log-newer", {}, number));
    } else if (line === null || line.seq <= (lines.at(-1)?.seq ?? 0))
      problems.push(editProblem("log-damaged", { line: number, byte: start + 1 }, number));
    else lines.push(line);
    start = end + 1;
  }
  if (start < bytes.length) problems.push(editProblem("log-torn", { bytes: bytes.length - start }, number + 1));
  return { lines, problems, whole: start, newer };
}
