// Opens a file of records as a notebook beside it would: by its description, with its edits.
import { basename } from "node:path";
import { problems } from "../core/base/index.ts";
import { type ColumnTable, columnName, columnsFromTable } from "../core/columns/index.ts";
import {
  descriptionWithUsual,
  editedRecords,
  editLogFromBytes,
  NO_EDITS,
  type RecordTable,
  readRecords,
  type TableDescription,
  type TableEdits,
} from "../core/records/index.ts";
import { editsPath } from "../notebook/engine/index.ts";
import type { CommandAnswer } from "./command.ts";
import { describedBeside } from "./described-beside.ts";
import { missingFile, problemAnswer } from "./open-notebook.ts";
import type { Surface } from "./surface.ts";

/** `edits`: what was done to its rows; `columns`: the table typed; `said`: the maker's own description. */
export type OpenedRecords =
  | {
      readonly ok: true;
      readonly table: RecordTable;
      readonly edits: TableEdits;
      readonly columns: () => ColumnTable;
      readonly said: TableDescription | null;
    }
  | { readonly ok: false; readonly answer: CommandAnswer };

/** One table of a file. place: which of its tables (of that sheet, where one is named), from 1. */
export async function openRecords(
  file: string,
  place: { readonly sheet: string | null; readonly table: number },
  surface: Surface,
): Promise<OpenedRecords> {
  const bytes = await surface.read(file);
  if (bytes === null) return { ok: false, answer: missingFile(file) };
  const described = await describedBeside(file, surface);
  if (!described.ok) return { ok: false, answer: problemAnswer([described.problem]) };
  const { said } = described;
  const log = await surface.read(editsPath(file));
  const { result, ...edited } = log
    ? await editedRecords(bytes, file, said?.read ?? {}, editLogFromBytes(log), said ?? {})
    : { result: await readRecords(bytes, file, said?.read, said ?? {}), tables: [], problems: [] };
  if (edited.problems.length > 0) return { ok: false, answer: problemAnswer(edited.problems) };
  const { tables, warnings } = result;
  if (tables.length === 0) {
    const code = warnings.some((warning) => warning.code === "empty-file") ? "empty-file" : "not-a-table";
    return { ok: false, answer: problemAnswer([{ code, sentence: problems[code]({ file }), file }]) };
  }
  const table = tables.filter((each) => place.sheet === null || each.sheet === place.sheet)[place.table - 1];
  if (table === undefined) {
    const name = place.sheet === null ? `table ${place.table}` : `table ${place.table} of sheet ${place.sheet}`;
    const sentence = problems["unknown-table"]({ name });
    return { ok: false, answer: problemAnswer([{ code: "unknown-table", sentence, file }]) };
  }
  const name = columnName(basename(file).replace(/\.[^.]*$/, ""));
  const edits = edited.tables[tables.indexOf(table)] ?? NO_EDITS;
  const columns = () => columnsFromTable(table, file, name, descriptionWithUsual([table], said) ?? undefined, edits);
  return { ok: true, table, edits, said, columns };
}
