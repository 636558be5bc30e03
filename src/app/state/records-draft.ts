// What is being written under a cell of a record table: its text, or the reason for setting its row aside.
import type { RecordEdit, RecordsPage, RecordsRow } from "../../core/records/index.ts";

/** `base`: the table as it was when this was begun; `begun`: what the cell held then. */
export type RecordsDraft = {
  readonly what: "cell" | "set-aside";
  readonly row: number;
  readonly col: number;
  readonly base: string;
  readonly begun: string;
  readonly text: string;
};

/** A draft at a cell, or at the row's head (column 0); null where nothing may be written. */
export function draftAt(col: number, row: RecordsRow | undefined, head: RecordsPage | null): RecordsDraft | null {
  if (row === undefined || head === null) return null;
  const [what, begun] = col === 0 ? (["set-aside", ""] as const) : (["cell", row.cells[col - 1]?.raw ?? ""] as const);
  const may = what === "cell" ? head.editable : head.canSetAside && row.setAside === undefined;
  return may ? { what, row: row.row, col, base: head.digest, begun, text: begun } : null;
}

/** The same text over the table as it is now: what was typed stays, what it would replace is what the cell holds by now. */
export function draftOver(draft: RecordsDraft, row: RecordsRow | undefined, head: RecordsPage): RecordsDraft {
  const now = draftAt(draft.col, row, head);
  return { ...draft, base: head.digest, begun: now?.row === draft.row ? now.begun : draft.begun };
}

/** The edit that a draft comes to. */
export const editFromDraft = ({ what, row, col, begun, text }: RecordsDraft, table: number): RecordEdit =>
  what === "cell" ? { what, table, row, col, before: begun, after: text } : { what, table, row, reason: text.trim() };

/** What came of a draft, once it is saved; `now`: the row as it is read by then. */
export function savedInWords(
  { what, row, col, text }: RecordsDraft,
  now: RecordsRow | undefined,
  head: RecordsPage | null,
): string {
  if (what === "set-aside") return `Row ${row} is set aside: ${text.trim()}.`;
  const name = head?.columns[col - 1]?.name;
  const cell = now?.row === row ? now.cells[col - 1] : undefined;
  if (cell === undefined) return `Saved: ${name} of row ${row}.`;
  return [`Saved: ${name} of row ${row} is read as ${cell.reading}.`, cell.warning?.sentence ?? ""].join(" ").trim();
}
