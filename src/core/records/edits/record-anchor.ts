import type { RecordTable } from "../read-result.ts";
import { recordText } from "./delimited-source.ts";
import type { RecordAnchor } from "./edit-log-line.ts";
import type { EditedRecords } from "./edited-records.ts";
import { rowText } from "./record-finder.ts";

/** What the log calls a row (from 0) of a table by. */
export function recordAnchor(state: EditedRecords, table: RecordTable, row: number): RecordAnchor {
  const record = table.records[row] ?? 0;
  const source = state.behind.source();
  if (source === null) return { sheet: table.sheet ?? table.name, record, text: rowText(table, row) };
  const from = state.origin(record);
  return "added" in from ? from : { record: from.record, text: recordText(source, from.record) ?? "" };
}
