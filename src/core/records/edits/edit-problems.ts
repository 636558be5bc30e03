// What can be wrong with an edit of a record or with its log. Code and facts are the truth; the sentence is made here and nowhere else.
import { serviceProblems } from "../../base/index.ts";
import type { RecordsProblem } from "./records-page.ts";

type None = Record<never, never>;
/** Facts by code: add a line here and its sentence below. */
export type EditFacts = {
  "edit-row-missing": { row: number };
  "edit-column-missing": { col: number };
  "edit-stale": { now: string };
  "edit-character": { character: string; encoding: string };
  "edit-changes-reading": None;
  "edit-loses-row": None;
  "edit-in-workbook": None;
  "edit-reason-missing": None;
  "edit-not-set-aside": { row: number };
  "edit-too-many-cells": { have: number; most: number };
  "edit-table-empty": None;
  "nothing-to-undo": None;
  "nothing-to-redo": None;
  "undo-alone": None;
  "edit-record-gone": { edit: number; text: string };
  "aside-record-gone": { reason: string; text: string };
  "edit-cell-differs": { edit: number; before: string; now: string };
  "log-damaged": { line: number; byte: number };
  "log-torn": { bytes: number };
  "log-newer": None;
  "folder-held": { holder: number };
};
export type EditProblemCode = keyof EditFacts;

const short = (text: string): string => (text.length > 60 ? `${text.slice(0, 59)}…` : text);

/** The sentence of each code: what is so, what to do. */
export const editProblems: { readonly [C in EditProblemCode]: (facts: EditFacts[C]) => string } = {
  "edit-row-missing": ({ row }) => `The table has no row ${row}. Look at it again.`,
  "edit-column-missing": ({ col }) => `The table has no column ${col}. Look at it again.`,
  "edit-stale": ({ now }) =>
    `The cell holds “${short(now)}” by now, so nothing was changed. Look at it and edit it again.`,
  "edit-character": ({ character, encoding }) =>
    `The file is stored as ${encoding}, which has no ${character}. Write it another way, or save the file as UTF-8 first.`,
  "edit-changes-reading": () =>
    "With this text other cells of the file would be read another way, so nothing was changed. Write it another way.",
  "edit-loses-row": () =>
    "With this text the record would no longer be read as a row of the table. Set the row aside instead, or write it another way.",
  "edit-in-workbook": () =>
    "Cells of a workbook are not edited here. Export the table as CSV, bring that in, and edit it there.",
  "edit-reason-missing": () => "A row is set aside with a reason. Write why.",
  "edit-not-set-aside": ({ row }) => `Row ${row} is not set aside here, so there is nothing to bring back.`,
  "edit-too-many-cells": ({ have, most }) =>
    `The record has ${have} cells and the table ${most} columns. Leave some out.`,
  "edit-table-empty": () =>
    "A record cannot be added to a table without rows that stands above another. Write the first one in the file.",
  "nothing-to-undo": () => "There is no edit left to take back.",
  "nothing-to-redo": () => "There is no edit to do again.",
  "undo-alone": () => "Taking back and doing again go one at a time.",
  "edit-record-gone": ({ edit, text }) =>
    `Edit ${edit} was made on the record “${short(text)}”, which is not in the file any more, or not only once. It is kept and not applied; make it again.`,
  "aside-record-gone": ({ reason, text }) =>
    `The record “${short(text)}” was set aside (${short(reason)}) and is not in the file any more, or not only once. Set it aside again.`,
  "edit-cell-differs": ({ edit, before, now }) =>
    `Edit ${edit} was made on “${short(before)}”, and the file has “${short(now)}” there now. It is kept and not applied; make it again.`,
  "log-damaged": ({ line, byte }) =>
    `Line ${line} of the edits (byte ${byte}) is damaged and was not applied. The other edits are; look for a copy of the file of edits.`,
  "log-torn": ({ bytes }) =>
    `The last edit was not written whole (${bytes} bytes) and is not applied. Everything that was said to be saved is there.`,
  "log-newer": () =>
    "The edits were made by a newer version of the program, so nothing can be edited here. Use that version.",
  "folder-held": serviceProblems["folder-held"],
};

/** The problem of a code with its sentence; `line`: of the log. */
export const editProblem = <C extends EditProblemCode>(
  code: C,
  facts: EditFacts[C],
  line?: number,
): RecordsProblem => ({
  code,
  sentence: editProblems[code](facts),
  ...(line === undefined ? {} : { line }),
});
