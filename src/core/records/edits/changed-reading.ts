// Whether edits would change more than they say: a row that vanishes, another cell that is read otherwise, a record in another table.
import { rawAt } from "../cells.ts";
import type { EditLogLine } from "./edit-log-line.ts";
import { editProblem } from "./edit-problems.ts";
import type { EditedRecords } from "./edited-records.ts";
import type { RecordsProblem } from "./records-page.ts";

const originKey = (state: EditedRecords, record: number): string => {
  const from = state.origin(record);
  return "added" in from ? `+${from.added}` : String(from.record);
};

/** What is wrong with making `lines` in `before`, which gives `after`; null if nothing. Every raw text is compared. */
export function changedReading(
  before: EditedRecords,
  after: EditedRecords,
  lines: readonly EditLogLine[],
): RecordsProblem | null {
  const other = editProblem("edit-changes-reading", {});
  const lost = editProblem("edit-loses-row", {});
  const edits = lines.filter((line) => line.what === "cell" || line.what === "add");
  if (edits.length === 0) return null;
  if (after.problems.length > before.problems.length) return after.problems.at(-1) ?? other;
  if (after.result.tables.length !== before.result.tables.length) return lost;
  const texts = new Map<string, string>();
  for (const line of edits)
    if (line.what === "cell")
      texts.set(`${"added" in line.row ? `+${line.row.added}` : line.row.record} ${line.place}`, line.after);
  for (const [at, table] of before.result.tables.entries()) {
    const now = after.result.tables[at];
    const added = edits.flatMap((line) => (line.what === "add" && line.table === at + 1 ? [line] : []));
    if (!now || now.rowCount !== table.rowCount + added.length) return lost;
    if (now.columns.length !== table.columns.length) return other;
    for (let row = 0; row < now.rowCount; row++) {
      const origin = originKey(after, now.records[row] ?? 0);
      const own = added[row - table.rowCount];
      if (origin !== (own ? `+${own.seq}` : originKey(before, table.records[row] ?? 0))) return lost;
      for (const [col, column] of now.columns.entries()) {
        const was = table.columns[col];
        if (was?.place !== column.place || was.name !== column.name) return other;
        const expected =
          texts.get(`${origin} ${column.place}`) ?? (own ? (own.fields[column.place] ?? "") : rawAt(was.cells, row));
        if (rawAt(column.cells, row) !== expected) return other;
      }
    }
  }
  return null;
}
