import { readTable } from "../../core/records/index.ts";
import { type Command, textOption, UsageError } from "../command.ts";
import { missingFile, problemAnswer } from "../open-notebook.ts";
import type { problemLines } from "../problem-lines.ts";

type Options = Parameters<typeof readTable>[2];
type ReadResult = ReturnType<typeof readTable>;

function optionsFrom(text: string | undefined): Options {
  if (text === undefined) return undefined;
  try {
    const parsed: unknown = JSON.parse(text);
    if (typeof parsed === "object" && parsed !== null && !Array.isArray(parsed)) return parsed as Options;
  } catch {
    // Falls through to the usage error: both are the same mistake.
  }
  throw new UsageError("--options needs one JSON object");
}

const inWords = (read: ReadResult): string =>
  [
    read.file,
    ...read.tables.flatMap((table) => [
      `  ${table.name}: ${table.rows.length} records`,
      ...table.columns.map(
        (column) => `    ${column.name}: ${column.kind}${column.unit === null ? "" : ` in ${column.unit}`}`,
      ),
    ]),
    ...read.setAside.map((each) => `  set aside: record ${each.record ?? ""} ${each.code}`),
    ...read.warnings.map(
      (each) => `  ${[each.table, each.row, each.col].filter((part) => part !== undefined).join(":")} ${each.code}`,
    ),
  ].join("\n");

const isRefused = (read: ReadResult): boolean =>
  read.tables.length === 0 && !read.warnings.every((warning) => warning.code === "empty-file");

/** How each cell of some files was read. */
export const read: Command = {
  name: "read",
  usage: "FILE… [--options JSON]",
  sentence: "How each cell was read, with warnings and what was set aside.",
  options: { options: { type: "string" } },
  files: [1, 1000],
  run: async (given, surface) => {
    const options = optionsFrom(textOption(given, "options"));
    const results: ReadResult[] = [];
    const missing: ReturnType<typeof missingFile>[] = [];
    for (const file of given.files) {
      const bytes = await surface.read(file);
      if (bytes === null) missing.push(missingFile(file));
      else results.push(readTable(bytes, file, options));
    }
    if (missing.length > 0) {
      const all = missing.flatMap(
        (answer) => (answer.json as { readonly problems: Parameters<typeof problemLines>[0] }).problems,
      );
      return problemAnswer(all);
    }
    return {
      code: results.some(isRefused) ? 1 : 0,
      json: results.length === 1 ? results[0] : results,
      text: results.map(inWords).join("\n"),
    };
  },
};
