// From what the maker asks to the lines of the log, or why not: all edits of a request are made, or none.
import { rawAt } from "../cells.ts";
import type { RecordTable } from "../read-result.ts";
import { type DelimitedSource, recordFields, recordText } from "./delimited-source.ts";
import type { EditLogLine, LoggedStep, RecordAnchor } from "./edit-log-line.ts";
import { type EditFacts, type EditProblemCode, editProblem } from "./edit-problems.ts";
import type { EditedRecords } from "./edited-records.ts";
import { encodedText } from "./encoded-text.ts";
import { recordAnchor } from "./record-anchor.ts";
import type { RecordEdit } from "./record-edit.ts";
import type { RecordsProblem } from "./records-page.ts";

export type LineHead = Pick<EditLogLine, "time" | "id" | "base"> & { readonly lastSeq: number };
export type PlannedLines =
  | { readonly ok: true; readonly lines: readonly EditLogLine[] }
  | { readonly ok: false; readonly problem: RecordsProblem };

/** What earlier edits of the same request have done. */
type Planning = {
  readonly state: EditedRecords;
  readonly seq: number;
  /** Raw text by "table row col". */
  readonly cells: Map<string, string>;
  /** Whether a row is set aside, by "table row". */
  readonly asides: Map<string, boolean>;
  /** The record that the next added one goes after, by table. */
  readonly last: Map<number, RecordAnchor>;
};
type Step = LoggedStep | { readonly problem: RecordsProblem };

const refused = <C extends EditProblemCode>(code: C, facts: EditFacts[C]): Step => ({
  problem: editProblem(code, facts),
});

const tableOf = ({ state }: Planning, { table }: { readonly table: number }): RecordTable | undefined =>
  state.result.tables[table - 1];
const hasRow = (table: RecordTable | undefined, row: number): table is RecordTable =>
  table !== undefined && row >= 1 && row <= table.rowCount;

/** The first character of some texts that a file cannot hold, as a refusal. */
function lacking({ encoding }: DelimitedSource, texts: readonly string[]): Step | null {
  for (const text of texts) {
    const bytes = encodedText(text, encoding);
    if (!(bytes instanceof Uint8Array)) return refused("edit-character", { character: bytes.lacks, encoding });
  }
  return null;
}

/** The record that the first added one goes after: the table's last row, or in a last table without rows the file's last record. */
function lastOf(planning: Planning, table: RecordTable, number: number, source: DelimitedSource): RecordAnchor | null {
  const { state } = planning;
  if (table.rowCount > 0) return recordAnchor(state, table, table.rowCount - 1);
  if (number < state.result.tables.length) return null;
  for (let at = source.spans.starts.length - 1; at >= 0; at--) {
    const text = recordText(source, at + source.first) ?? "";
    if (text.trim() !== "") return { record: at + source.first, text };
  }
  return null;
}

const steps: { readonly [W in RecordEdit["what"]]: (edit: RecordEdit & { what: W }, planning: Planning) => Step } = {
  cell: (edit, planning) => {
    const { state, cells } = planning;
    const table = tableOf(planning, edit);
    if (!hasRow(table, edit.row)) return refused("edit-row-missing", { row: edit.row });
    const column = table.columns[edit.col - 1];
    if (!column) return refused("edit-column-missing", { col: edit.col });
    const source = state.behind.source();
    if (source === null) return refused("edit-in-workbook", {});
    const key = `${edit.table} ${edit.row} ${edit.col}`;
    const now = cells.get(key) ?? rawAt(column.cells, edit.row - 1);
    if (now !== edit.before) return refused("edit-stale", { now });
    cells.set(key, edit.after);
    const row = recordAnchor(state, table, edit.row - 1);
    const { table: number, before, after } = edit;
    return lacking(source, [after]) ?? { what: "cell", table: number, row, place: column.place, before, after };
  },
  "set-aside": (edit, planning) => {
    const table = tableOf(planning, edit);
    if (!hasRow(table, edit.row)) return refused("edit-row-missing", { row: edit.row });
    if (edit.reason.trim() === "") return refused("edit-reason-missing", {});
    planning.asides.set(`${edit.table} ${edit.row}`, true);
    const row = recordAnchor(planning.state, table, edit.row - 1);
    return { what: "set-aside", table: edit.table, row, reason: edit.reason.trim() };
  },
  "bring-back": (edit, planning) => {
    const { state, asides } = planning;
    const table = tableOf(planning, edit);
    if (!hasRow(table, edit.row)) return refused("edit-row-missing", { row: edit.row });
    const key = `${edit.table} ${edit.row}`;
    const isAside = asides.get(key) ?? state.tables[edit.table - 1]?.setAside.has(edit.row - 1) === true;
    if (!isAside) return refused("edit-not-set-aside", { row: edit.row });
    asides.set(key, false);
    return { what: "bring-back", table: edit.table, row: recordAnchor(state, table, edit.row - 1) };
  },
  add: (edit, planning) => {
    const { state, last, seq } = planning;
    const table = tableOf(planning, edit);
    if (!table) return refused("edit-row-missing", { row: 1 });
    const source = state.behind.source();
    if (source === null) return refused("edit-in-workbook", {});
    const most = table.columns.length;
    if (edit.cells.length > most) return refused("edit-too-many-cells", { have: edit.cells.length, most });
    const row = last.get(edit.table) ?? lastOf(planning, table, edit.table, source);
    if (row === null) return refused("edit-table-empty", {});
    last.set(edit.table, { added: seq });
    const width = "record" in row && table.rowCount > 0 ? recordFields(source, row.record).length : 0;
    const places = table.columns.map(({ place }) => place);
    const fields = Array.from({ length: Math.max(width, ...places.map((place) => place + 1)) }, () => "");
    for (const [col, text] of edit.cells.entries()) fields[places[col] ?? 0] = text;
    return lacking(source, fields) ?? { what: "add", table: edit.table, row, fields };
  },
  undo: (_, { state }) =>
    state.standing.undo === null ? refused("nothing-to-undo", {}) : { what: "undo", edit: state.standing.undo },
  redo: (_, { state }) =>
    state.standing.redo === null ? refused("nothing-to-redo", {}) : { what: "redo", edit: state.standing.redo },
};

/** The lines that make some edits in a state of the records. Time grows with the number of edits, not with the table. */
export function plannedLines(state: EditedRecords, edits: readonly RecordEdit[], head: LineHead): PlannedLines {
  const { lastSeq, ...rest } = head;
  const alone = edits.length === 1 || !edits.some(({ what }) => what === "undo" || what === "redo");
  if (!alone) return { ok: false, problem: editProblem("undo-alone", {}) };
  const planning = { state, cells: new Map(), asides: new Map(), last: new Map() };
  const lines: EditLogLine[] = [];
  for (const [index, edit] of edits.entries()) {
    const seq = lastSeq + index + 1;
    const plan = steps[edit.what] as (edit: RecordEdit, planning: Planning) => Step;
    const step = plan(edit, { ...planning, seq });
    if ("problem" in step) return { ok: false, problem: step.problem };
    lines.push({ v: 1, seq, ...rest, ...step });
  }
  return { ok: true, lines };
}
