// The edits that stand, each on the record of the file that it means now. What finds no place, or not what it was made on, is said.
import type { CarriedAside, RecordAnchor } from "./edit-log-line.ts";
import { editProblem } from "./edit-problems.ts";
import { addedKey, type RecordFinder, recordKey } from "./record-finder.ts";
import type { RecordsProblem } from "./records-page.ts";
import type { StandingEdit, StandingEdits } from "./standing-edits.ts";

/** A record to be put in after one of the file. */
export type AddedRecord = { readonly edit: number; readonly after: number; readonly fields: string[] };
/** By key of the record: what its cells were in the file and are now, by place; and why it is set aside. */
export type PlacedEdits = {
  readonly cells: ReadonlyMap<string, ReadonlyMap<number, { readonly before: string; readonly after: string }>>;
  readonly added: readonly AddedRecord[];
  readonly asides: ReadonlyMap<string, string>;
  /** What found no place: edits by number, and rows set aside before the last writing. */
  readonly open: readonly number[];
  readonly lost: readonly CarriedAside[];
  readonly problems: readonly RecordsProblem[];
};

/** Raw text of a field of the file; null where its cells cannot be edited. */
export type RawOf = ((record: number, place: number) => string) | null;

const textOf = (row: RecordAnchor): string => ("text" in row ? row.text : "");

/** Places the edits that stand. `find`: of the file as it is now. */
export function placedEdits(standing: StandingEdits, find: RecordFinder, rawOf: RawOf): PlacedEdits {
  const cells = new Map<string, Map<number, { before: string; after: string }>>();
  const added = new Map<string, AddedRecord>();
  const asides = new Map<string, string>();
  const problems: RecordsProblem[] = [];
  const open: number[] = [];
  const lost: CarriedAside[] = [];

  /** Key and number of the record meant; an added record has the number of the one it goes after. */
  function placeOf(row: RecordAnchor): { key: string; record: number } | null {
    if ("added" in row) {
      const found = added.get(addedKey(row.added));
      return found ? { key: addedKey(row.added), record: found.after } : null;
    }
    const record = find(row);
    return record === null ? null : { key: recordKey(record, row.sheet), record };
  }

  function change(edit: StandingEdit & { what: "cell" }, key: string, record: number): void {
    const own = added.get(key);
    const known = cells.get(key)?.get(edit.place);
    const inFile = own ? "" : (rawOf?.(record, edit.place) ?? "");
    const now = own ? (own.fields[edit.place] ?? "") : (known?.after ?? inFile);
    if (now !== edit.before && now !== edit.after) {
      open.push(edit.seq);
      problems.push(editProblem("edit-cell-differs", { edit: edit.seq, before: edit.before, now }));
    } else if (own) {
      while (own.fields.length < edit.place) own.fields.push("");
      own.fields[edit.place] = edit.after;
    } else {
      const ofRecord = cells.get(key) ?? new Map<number, { before: string; after: string }>();
      cells.set(key, ofRecord.set(edit.place, { before: inFile, after: edit.after }));
    }
  }

  for (const carried of standing.carried) {
    const found = placeOf(carried.row);
    if (found) asides.set(found.key, carried.reason);
    else {
      lost.push(carried);
      problems.push(editProblem("aside-record-gone", { reason: carried.reason, text: textOf(carried.row) }));
    }
  }
  for (const edit of standing.edits) {
    const found = placeOf(edit.row);
    if (!found) {
      open.push(edit.seq);
      problems.push(editProblem("edit-record-gone", { edit: edit.seq, text: textOf(edit.row) }));
      continue;
    }
    if (edit.what === "set-aside") asides.set(found.key, edit.reason);
    else if (edit.what === "bring-back") asides.delete(found.key);
    else if (rawOf === null) problems.push(editProblem("edit-in-workbook", {}));
    else if (edit.what === "cell") change(edit, found.key, found.record);
    else added.set(addedKey(edit.seq), { edit: edit.seq, after: found.record, fields: [...edit.fields] });
  }
  return { cells, added: [...added.values()], asides, open, lost, problems };
}
