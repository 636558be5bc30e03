// Whether edits would change more than they say: a row that vanishes, another cell that is read otherwise, a record in another table.
import { rawAt } from "../cells.ts";
import type { RecordTable } from "../read-result.ts";
import type { EditLogLine } from "./edit-log-line.ts";
import { editProblem } from "./edit-problems.ts";
import type { EditedRecords } from "./edited-records.ts";
import type { RecordsProblem } from "./records-page.ts";

type Edit = Extract<EditLogLine, { what: "cell" | "add" }>;
type Added = Extract<EditLogLine, { what: "add" }>;
/** Texts of edited cells by record, then by place. */
type Texts = ReadonlyMap<string, ReadonlyMap<number, string>>;

const originKey = (state: EditedRecords, record: number): string => {
  const from = state.origin(record);
  return "added" in from ? `+${from.added}` : String(from.record);
};

function textsOf(edits: readonly Edit[]): Texts {
  const texts = new Map<string, Map<number, string>>();
  for (const line of edits) {
    if (line.what !== "cell") continue;
    const key = "added" in line.row ? `+${line.row.added}` : String(line.row.record);
    texts.set(key, (texts.get(key) ?? new Map<number, string>()).set(line.place, line.after));
  }
  return texts;
}

const hasSameColumns = (before: RecordTable, after: RecordTable): boolean =>
  after.columns.length === before.columns.length &&
  after.columns.every(({ place, name }, col) => {
    const was = before.columns[col];
    return was?.place === place && was.name === name;
  });

/** Whether a row holds what it held, but for the texts of its edited cells; `own`: the edit that has added it. */
const isAsSaid = (
  before: RecordTable,
  after: RecordTable,
  row: number,
  texts: ReadonlyMap<number, string> | undefined,
  own: Added | undefined,
): boolean =>
  after.columns.every(({ place, cells }, col) => {
    const was = before.columns[col];
    const expected = texts?.get(place) ?? (own ? own.fields[place] : was && rawAt(was.cells, row));
    return rawAt(cells, row) === (expected ?? "");
  });

/** What is wrong with making `lines` in `before`, which gives `after`; null if nothing. Every raw text is compared. */
export function changedReading(
  before: EditedRecords,
  after: EditedRecords,
  lines: readonly EditLogLine[],
): RecordsProblem | null {
  const [other, lost] = [editProblem("edit-changes-reading", {}), editProblem("edit-loses-row", {})];
  const edits = lines.filter((line): line is Edit => line.what === "cell" || line.what === "add");
  if (edits.length === 0) return null;
  if (after.problems.length > before.problems.length) return after.problems.at(-1) ?? other;
  if (after.result.tables.length !== before.result.tables.length) return lost;
  const texts = textsOf(edits);
  for (const [at, table] of before.result.tables.entries()) {
    const now = after.result.tables[at];
    const added = edits.flatMap((line) => (line.what === "add" && line.table === at + 1 ? [line] : []));
    if (!now || now.rowCount !== table.rowCount + added.length) return lost;
    if (!hasSameColumns(table, now)) return other;
    for (let row = 0; row < now.rowCount; row++) {
      const own = added[row - table.rowCount];
      const origin = originKey(after, now.records[row] ?? 0);
      if (origin !== (own ? `+${own.seq}` : originKey(before, table.records[row] ?? 0))) return lost;
      if (!isAsSaid(table, now, row, texts.get(origin), own)) return other;
    }
  }
  return null;
}
