import { printedReadResult, readingWarnings, readRecords } from "../../core/records/index.ts";
import { type Command, textOption, UsageError } from "../command.ts";
import { describedBeside } from "../described-beside.ts";
import { missingFile, problemAnswer } from "../open-notebook.ts";
import { type AnyProblem, problemLines } from "../problem-lines.ts";
import type { Surface } from "../surface.ts";

type Options = Parameters<typeof readRecords>[2];
/** `problems`: what is wrong with the description beside the file; left out when nothing is. */
type ReadResult = Awaited<ReturnType<typeof readRecords>> & { readonly problems?: readonly AnyProblem[] };

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

type ReadWarning = ReadResult["warnings"][number];
const placeOf = ({ table, row, col }: ReadWarning) => [table, row, col].filter((part) => part !== undefined).join(":");
/** What a warning about the whole file says; those about cells are many, and their codes are enough. */
const aboutFile = ({ row, col, code }: ReadWarning) =>
  row === undefined && col === undefined ? `: ${readingWarnings.get(code) ?? ""}` : "";

const inWords = (read: ReadResult): string =>
  [
    read.file,
    ...read.tables.flatMap((table) => [
      `  ${table.name}: ${table.rowCount} records`,
      ...table.columns.map(
        (column) => `    ${column.name}: ${column.kind}${column.unit === null ? "" : ` in ${column.unit}`}`,
      ),
    ]),
    ...read.setAside.map(
      ({ sheet, record, code }) =>
        `  set aside: ${[sheet, record === undefined ? "" : `record ${record}`, code].filter(Boolean).join(" ")}`,
    ),
    ...read.warnings.map((each) => `  ${placeOf(each)} ${each.code}${aboutFile(each)}`),
    ...(read.problems === undefined ? [] : [problemLines(read.problems)]),
  ].join("\n");

/** One result as it is, several as a list. */
function* inJson(results: readonly ReadResult[]): Iterable<string> {
  if (results.length > 1) yield "[";
  for (const [at, { problems: found, ...read }] of results.entries()) {
    if (at > 0) yield ",\n";
    yield* printedReadResult(read, found ? { problems: found } : {});
  }
  if (results.length > 1) yield "]";
}

const isRefused = (read: ReadResult): boolean =>
  read.problems !== undefined ||
  (read.tables.length === 0 && !read.warnings.every((warning) => warning.code === "empty-file"));

/** A file read as a notebook beside it would: by the maker's description of it, which the options given go before. */
async function fileRead(bytes: Uint8Array, file: string, options: Options, surface: Surface): Promise<ReadResult> {
  const described = await describedBeside(file, surface);
  if (!described.ok) return { ...(await readRecords(bytes, file, options)), problems: [described.problem] };
  const { said } = described;
  return said === null
    ? readRecords(bytes, file, options)
    : readRecords(bytes, file, { ...said.read, ...options }, said);
}

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
      else results.push(await fileRead(bytes, file, options, surface));
    }
    if (missing.length > 0) {
      const all = missing.flatMap(
        (answer) => (answer.json as { readonly problems: Parameters<typeof problemLines>[0] }).problems,
      );
      return problemAnswer(all);
    }
    return {
      code: results.some(isRefused) ? 1 : 0,
      json: null,
      pieces: () => inJson(results),
      text: results.map(inWords).join("\n"),
    };
  },
};
