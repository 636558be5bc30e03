import { problems } from "../../core/base/index.ts";
import { type ColumnTable, exportedFromColumns } from "../../core/columns/index.ts";
import {
  csvFromRecords,
  descriptionOfRecords,
  type Exported,
  type ExportFormat,
  exportFormats,
} from "../../core/records/index.ts";
import { descriptionPath } from "../../notebook/engine/index.ts";
import { type Command, type CommandAnswer, type Given, textOption, UsageError } from "../command.ts";
import { isEarlierExport } from "../is-earlier-export.ts";
import { openNotebook, problemAnswer } from "../open-notebook.ts";
import { openRecords } from "../open-records.ts";
import { notWritten, programProblem } from "../program-problems.ts";
import type { Surface } from "../surface.ts";

/** What is to be written, and the name of the table; or the answer that says why there is none. */
type Ready = { readonly name: string; readonly rows: number; readonly exported: Exported };
type Readied = Ready | { readonly answer: CommandAnswer };

const NOTEBOOK_TABLE = ".md#";

const readied = async (table: ColumnTable, as: ExportFormat): Promise<Readied> => ({
  name: table.name,
  rows: table.rowCount,
  exported: await as.exported(exportedFromColumns(table)),
});

/** A table of a notebook: measured columns and those of its formulas. */
async function ofNotebook(file: string, name: string, as: ExportFormat, surface: Surface): Promise<Readied> {
  const opened = await openNotebook(file, surface);
  if (!opened.ok) return opened;
  const { entries } = opened.engine.result();
  const table = opened.engine.tables().get(name);
  opened.engine.dispose();
  const own = entries.filter((entry) => entry.name === name && ["records", "columns"].includes(entry.kind));
  const wrong = own.flatMap((entry) => entry.problems);
  if (wrong.length > 0) return { answer: problemAnswer(wrong) };
  if (table) return readied(table, as);
  return { answer: problemAnswer([{ code: "unknown-table", sentence: problems["unknown-table"]({ name }), file }]) };
}

/** A table of a file: its raw cells as CSV, its values in any other form or where they are asked for. */
async function ofFile(file: string, given: Given, as: ExportFormat, surface: Surface): Promise<Readied> {
  const table = Number(textOption(given, "table") ?? "1");
  if (!Number.isInteger(table) || table < 1) throw new UsageError("--table needs a number from 1");
  const opened = await openRecords(file, { sheet: textOption(given, "sheet") ?? null, table }, surface);
  if (!opened.ok) return opened;
  if (as.id !== "csv" || given.values["values"] === true) return readied(opened.columns(), as);
  const { name, rowCount } = opened.table;
  const exported = {
    content: csvFromRecords(opened.table, opened.edits.setAside),
    description: descriptionOfRecords(opened.said),
  };
  return { name, rows: rowCount, exported };
}

/** A name of a table as the name of a file in this folder. */
const fileName = (name: string): string =>
  [...name]
    .map((letter) => (letter < " " || '/\\:*?"<>|'.includes(letter) ? "_" : letter))
    .join("")
    .replace(/^\./, "_");

/** Writes the description first: without it a guarded table would be read with its guards. */
async function written(
  file: string,
  { rows, exported }: Ready,
  as: ExportFormat,
  replace: boolean,
  surface: Surface,
): Promise<CommandAnswer> {
  const { content, description } = exported;
  const contents = new Map<string, string | Uint8Array>();
  if (description) contents.set(descriptionPath(file), `${JSON.stringify(description, null, 2)}\n`);
  contents.set(file, content);
  const mayReplace = replace && (await isEarlierExport(file, as.id, surface));
  for (const each of mayReplace ? [] : contents.keys())
    if ((await surface.read(each)) !== null)
      return problemAnswer([programProblem("file-exists", { file: each }, each)]);
  for (const [each, made] of contents) {
    const outcome = await surface.write(each, made);
    if (!outcome.ok) return problemAnswer([notWritten(each, outcome.reason)]);
  }
  const files = [file, ...(description ? [descriptionPath(file)] : [])];
  return { code: 0, json: { files }, text: `${rows} records: ${files.join(", ")}` };
}

/** A table for other tools, and for what pools the records of several shops. */
export const exportTable: Command = {
  name: "export",
  usage: "TABLE --as csv|json|arrow|parquet [-o FILE] [--values] [--sheet NAME] [--table N] [--replace]",
  sentence:
    "A table for other tools. TABLE is a file (as csv its raw cells, or its values by --values) or NOTEBOOK.md#TABLE, with its formulas.",
  options: {
    as: { type: "string" },
    output: { type: "string", short: "o" },
    values: { type: "boolean" },
    sheet: { type: "string" },
    table: { type: "string" },
    replace: { type: "boolean" },
  },
  files: [1, 1],
  run: async (given, surface) => {
    const [from = ""] = given.files;
    const as = exportFormats.find(({ id }) => id === textOption(given, "as"));
    if (!as) throw new UsageError(`--as needs one of ${exportFormats.map(({ id }) => id).join(", ")}`);
    const at = from.lastIndexOf(NOTEBOOK_TABLE);
    const ready =
      at < 0
        ? await ofFile(from, given, as, surface)
        : await ofNotebook(from.slice(0, at + 3), from.slice(at + NOTEBOOK_TABLE.length), as, surface);
    if ("answer" in ready) return ready.answer;
    const file = textOption(given, "output") ?? `${fileName(ready.name)}.${as.id}`;
    return written(file, ready, as, given.values["replace"] === true, surface);
  },
};
