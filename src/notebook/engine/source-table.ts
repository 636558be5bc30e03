// The columns of the table that a line of an entry names, out of a file's reading, or the problem with that file.
import { type ColumnTable, columnsFromTable } from "../../core/columns/index.ts";
import type { Span } from "../../core/formula/index.ts";
import { type Computed, computed, failed, type Inputs, type LocalProblem } from "./cell.ts";
import { cells } from "./cells.ts";

export type SourceLine = {
  readonly file: string;
  readonly path: string;
  readonly sheet: string | null;
  readonly table: number | null;
  readonly span: Span;
};

/** The table named by `from FILE [sheet "NAME"] [table N]`, as columns called `name`. */
export function sourceTable(line: SourceLine, name: string, inputs: Inputs): Computed<ColumnTable> {
  const reading = inputs.get(cells.reading(line.path));
  const at = (code: LocalProblem["code"], facts: LocalProblem["facts"]): LocalProblem => ({
    code,
    facts,
    span: line.span,
  });
  if (!reading.ok) return failed(at("waits-for", { name: line.file }));
  if (reading.value.result === null) return failed(at("missing-file", { file: line.file }));
  const { result, description, edits, unplaced, faulty } = reading.value;
  if (result.tables.length === 0) {
    const code = result.warnings.some((warning) => warning.code === "empty-file") ? "empty-file" : "not-a-table";
    return failed(at(code, { file: line.file }));
  }
  const ofSheet = result.tables.filter(({ sheet }) => line.sheet === null || sheet === line.sheet);
  const table = ofSheet[(line.table ?? 1) - 1];
  if (!table) return failed(at("unknown-table", { name: line.sheet ?? `table ${line.table ?? 1} of ${line.file}` }));
  const remarks: LocalProblem[] = [];
  if (faulty) remarks.push(at("description-not-understood", faulty));
  if (unplaced > 0) remarks.push(at("edits-unplaced", { file: line.file, count: unplaced }));
  const edited = edits[result.tables.indexOf(table)];
  return computed(columnsFromTable(table, line.file, name, description ?? undefined, edited), remarks);
}
