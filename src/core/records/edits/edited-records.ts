// A file of records as its edits make it: read again with them, and for each row what the edits did to it.
import type { ReadOptions } from "../read-options.ts";
import { readRecords } from "../read-records.ts";
import type { ReadResult } from "../read-result.ts";
import type { SaidOfTable } from "../table-description.ts";
import { readField, recordFields } from "./delimited-source.ts";
import type { EditLog } from "./edit-log-from-bytes.ts";
import { editedBytes } from "./edited-bytes.ts";
import { type FileBehind, fileBehind } from "./file-behind.ts";
import { type PlacedEdits, placedEdits } from "./placed-edits.ts";
import { addedKey, delimitedFinder, recordKey, sheetFinder } from "./record-finder.ts";
import type { RecordsProblem } from "./records-page.ts";
import { type StandingEdits, standingEdits } from "./standing-edits.ts";

/** What edits did to the rows of a table, rows and columns from 0: `before` is the raw text in the file. */
export type TableEdits = {
  readonly setAside: ReadonlyMap<number, string>;
  readonly before: ReadonlyMap<number, ReadonlyMap<number, string>>;
  readonly added: ReadonlySet<number>;
};
export const NO_EDITS: TableEdits = { setAside: new Map(), before: new Map(), added: new Set() };

/** `origin`: where a record of the edited file comes from. `behind`: the file before its edits. */
export type EditedRecords = {
  readonly bytes: Uint8Array;
  readonly behind: FileBehind;
  readonly result: ReadResult;
  readonly standing: StandingEdits;
  readonly tables: readonly TableEdits[];
  /** What found no place in the file as it is now. */
  readonly unplaced: Pick<PlacedEdits, "open" | "lost">;
  readonly problems: readonly RecordsProblem[];
  readonly origin: RecordOrigin;
};
/** From the number of a record in the edited file to its number in the file, or the edit that added it. */
export type RecordOrigin = (record: number) => { readonly record: number } | { readonly added: number };

function recordOrigin(added: PlacedEdits["added"]): RecordOrigin {
  const sorted = [...added].sort((a, b) => a.after - b.after);
  const edits = new Map(sorted.map(({ edit, after }, before) => [after + before + 1, edit]));
  const numbers = [...edits.keys()];
  return (record) => {
    const edit = edits.get(record);
    if (edit !== undefined) return { added: edit };
    let [low, high] = [0, numbers.length];
    while (low < high) {
      const middle = (low + high) >>> 1;
      if ((numbers[middle] ?? 0) < record) low = middle + 1;
      else high = middle;
    }
    return { record: record - low };
  };
}

function editsOfTables(result: ReadResult, { cells, asides }: PlacedEdits, origin: RecordOrigin, workbook: boolean) {
  return result.tables.map((table): TableEdits => {
    const [setAside, before, added] = [
      new Map<number, string>(),
      new Map<number, Map<number, string>>(),
      new Set<number>(),
    ];
    const columnAt = new Map(table.columns.map(({ place }, col) => [place, col]));
    for (const [row, record] of table.records.entries()) {
      const from = workbook ? { record } : origin(record);
      if ("added" in from) added.add(row);
      const key =
        "added" in from ? addedKey(from.added) : recordKey(from.record, workbook ? (table.sheet ?? table.name) : "");
      const [why, changed] = [asides.get(key), cells.get(key)];
      if (why !== undefined) setAside.set(row, why);
      if (!changed) continue;
      const ofRow = new Map<number, string>();
      for (const [place, cell] of changed) {
        const col = columnAt.get(place);
        if (col !== undefined && cell.before !== cell.after) ofRow.set(col, cell.before);
      }
      before.set(row, ofRow);
    }
    return { setAside, before, added };
  });
}

/** The records of a file with the edits of its log. Without any, what `readRecords` gives. `before`: as they were with another log. */
export async function editedRecords(
  bytes: Uint8Array,
  file: string,
  options: ReadOptions,
  log: EditLog,
  said: SaidOfTable = {},
  before?: EditedRecords,
): Promise<EditedRecords> {
  const behind = fileBehind(bytes, options, before?.behind);
  const standing = standingEdits(log.lines, log.lines.length === 0 ? "" : behind.mark());
  const untouched = standing.edits.length + standing.carried.length === 0;
  const source = untouched ? null : behind.source();
  if (source === null) {
    const result = await readRecords(bytes, file, options, said);
    const origin: RecordOrigin = (record) => ({ record });
    const placed = untouched ? null : placedEdits(standing, sheetFinder(result), null);
    const tables = placed ? editsOfTables(result, placed, origin, true) : result.tables.map(() => NO_EDITS);
    return {
      bytes,
      behind,
      result,
      standing,
      tables,
      origin,
      unplaced: placed ?? { open: [], lost: [] },
      problems: [...log.problems, ...(placed?.problems ?? [])],
    };
  }
  const placed = placedEdits(standing, delimitedFinder(source), (record, place) => {
    const field = recordFields(source, record)[place];
    return field ? readField(source, field) : "";
  });
  const edited = editedBytes(source, placed);
  const result = await readRecords(edited, file, options, said);
  const origin = recordOrigin(placed.added);
  const tables = editsOfTables(result, placed, origin, false);
  return {
    bytes: edited,
    behind,
    result,
    standing,
    tables,
    origin,
    unplaced: placed,
    problems: [...log.problems, ...placed.problems],
  };
}
