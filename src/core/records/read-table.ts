// From the bytes of a file to tables of typed cells. Nothing is guessed silently and nothing disappears.
import { limits } from "../base/index.ts";
import { tableLayout } from "./layout/table-layout.ts";
import type { ReadOptions } from "./read-options.ts";
import type { ReadResult, ReadWarning, RecordSetAside, RecordTable } from "./read-result.ts";
import { delimiterVote } from "./source/delimiter-vote.ts";
import { hasForeignSignature, isNotText } from "./source/is-not-text.ts";
import { isOtherText } from "./source/is-other-text.ts";
import { type RawRecords, widthOf } from "./source/raw-records.ts";
import { sourceText } from "./source/source-text.ts";
import { splitRecords } from "./source/split-records.ts";
import { withoutGuards } from "./source/without-guards.ts";
import { withoutOuterPipes } from "./source/without-outer-pipes.ts";
import type { SaidOfTable } from "./table-description.ts";
import { tableFromLayout } from "./table-from-layout.ts";

const SEPARATOR_LINE = /^sep=([^\r\n])(?:\r\n|\r|\n|$)/i;

/** A workbook is never empty: with nothing in it, it is a broken workbook and no empty table. */
const SHEET_NAME = /\.(?:xlsx|xls|ods)$/i;

/** The file's name without folders and without its ending. */
function stemOf(file: string): string {
  const name = file.slice(Math.max(file.lastIndexOf("/"), file.lastIndexOf("\\")) + 1);
  const dot = name.lastIndexOf(".");
  return dot > 0 ? name.slice(0, dot) : name;
}

/** The records of the text with their numbers in the file, and the delimiter that parted them. */
export function recordsFromText(
  text: string,
  given: string | undefined,
): { records: RawRecords; delimiter: string | null; separatorLine: boolean } {
  const line = SEPARATOR_LINE.exec(text.slice(0, 8));
  const start = line ? line[0].length : 0;
  const delimiter = given !== undefined && given.length === 1 ? given : (line?.[1] ?? delimiterVote(text, start));
  const split = splitRecords(text, delimiter, start);
  return {
    records: delimiter === "|" ? withoutOuterPipes(split) : split,
    delimiter,
    separatorLine: line !== null,
  };
}

/** What is over a stated limit, null if nothing is. */
function overLimit(records: RawRecords): string | null {
  const { count, firsts, starts, ends } = records;
  const longest = limits.cellCharacters.value;
  if (count > limits.rows.value) return "too-many-rows";
  for (let record = 0; record < count; record++)
    if (widthOf(records, record) > limits.columns.value) return "too-many-columns";
  for (let record = 0; record < count; record++) {
    const [first, past] = [firsts[record] ?? 0, firsts[record + 1] ?? 0];
    // Only a long record can have a long cell.
    if ((ends[past - 1] ?? 0) - (starts[first] ?? 0) <= longest) continue;
    for (let at = first; at < past; at++) if ((ends[at] ?? 0) - (starts[at] ?? 0) > longest) return "cell-too-long";
  }
  return starts.length > limits.cells.value ? "too-many-cells" : null;
}

/**
 * How a file of records was read: its tables, the records set aside, the warnings. `bytes`: the file as it lay on the disk;
 * `file`: its name, which names the tables; `options`: what the maker answered; `said`: what a description says of its columns and blanks. A file that is no table, or is over a stated
 * limit, has no tables and one warning that says so. Time grows with the size of the file.
 */
export function readTable(
  bytes: Uint8Array,
  file: string,
  options: ReadOptions = {},
  said: SaidOfTable = {},
): ReadResult {
  const head = { file, ...(Object.keys(options).length > 0 ? { options } : {}) };
  const refused = (code: string): ReadResult => ({ ...head, tables: [], setAside: [], warnings: [{ code }] });
  if (bytes.length > limits.tableBytes.value) return refused("file-too-large");
  if (hasForeignSignature(bytes)) return refused("not-a-table");
  const source = sourceText(bytes, options.encoding);
  if (isNotText(source.text) || isOtherText(source.text, file)) return refused("not-a-table");
  if (source.text.trim() === "" && SHEET_NAME.test(file)) return refused("not-a-table");
  const warnings: ReadWarning[] = source.guessed ? [{ code: "encoding-guessed" }] : [];
  if (source.text.trim() === "")
    return { ...head, tables: [], setAside: [], warnings: [...warnings, { code: "empty-file" }] };

  const { records: split, delimiter, separatorLine } = recordsFromText(source.text, options.delimiter);
  const records = options.guarded ? withoutGuards(split) : split;
  const over = overLimit(records);
  if (over) return refused(over);
  const layout = tableLayout(records, delimiter === "|");
  const setAside: RecordSetAside[] = [...(separatorLine ? [{ record: 1, code: "sep-line" }] : []), ...layout.setAside];
  const stem = stemOf(file);
  const tables: RecordTable[] = layout.tables.map((one, at) => {
    const { table, warnings: own } = tableFromLayout(one, at === 0 ? stem : `${stem} ${at + 1}`, options, said);
    if (one.header === null) warnings.push({ code: "no-header" });
    if (one.rows.length === 0) warnings.push({ code: "no-rows" });
    for (const warning of own) warnings.push(at === 0 ? warning : { table: at + 1, ...warning });
    return table;
  });
  if (tables.length === 0) warnings.push({ code: "empty-file" });
  return { ...head, tables, setAside, warnings };
}
