// One line of the log beside a table: an edit with everything it takes to do it again, on this file or on one that was changed since.
import { crc32 } from "./crc32.ts";

/**
 * The record that an edit is about. In the file: its number and whole raw text there (in a workbook its sheet, and the raw cells parted by
 * tabs). Added by an edit and not in the file yet: the number of that edit.
 */
export type RecordAnchor =
  | { readonly sheet?: string; readonly record: number; readonly text: string }
  | { readonly added: number };

/** `table` from 1; `place`: the field of the record, from 0; `row` of an added record: the one that it goes after. */
export type LoggedEdit =
  | {
      readonly what: "cell";
      readonly table: number;
      readonly row: RecordAnchor;
      readonly place: number;
      readonly before: string;
      readonly after: string;
    }
  | { readonly what: "set-aside"; readonly table: number; readonly row: RecordAnchor; readonly reason: string }
  | { readonly what: "bring-back"; readonly table: number; readonly row: RecordAnchor }
  | { readonly what: "add"; readonly table: number; readonly row: RecordAnchor; readonly fields: readonly string[] };

/** What was set aside when the edits were written into the file: it is in no file, so the log goes on saying it. */
export type CarriedAside = { readonly table: number; readonly row: RecordAnchor; readonly reason: string };

/**
 * `undo` and `redo` name the edit they mean. `writing` stands before the edits are written into the file, with the mark that the file has
 * then; `written` after it. Where only the first stands, the file's own mark tells. `open`: edits that had found no place.
 */
export type LoggedStep =
  | LoggedEdit
  | { readonly what: "undo" | "redo"; readonly edit: number }
  | {
      readonly what: "writing";
      readonly mark: string;
      readonly aside: readonly CarriedAside[];
      readonly open: readonly number[];
    }
  | { readonly what: "written" };

/** `seq` counts from 1 and decides the order, `time` never does. `id`: the request's. `base`: mark of the file's bytes at the time. */
export type EditLogLine = {
  readonly v: 1;
  readonly seq: number;
  readonly time: string;
  readonly id: string;
  readonly base: string;
} & LoggedStep;

const encoder = new TextEncoder();

/** What tells one state of a file from another: its length and CRC-32. */
export const fileMark = (bytes: Uint8Array): string => `${bytes.length}-${crc32(bytes)}`;

/** The checksum of a line: CRC-32 of its text in UTF-8 without `,"sum":"…"`. */
export const lineSum = (unsigned: string): string => crc32(encoder.encode(unsigned));

/** The line as it stands in the log: JSON, its checksum last, and the line end. */
export function printedLogLine(line: EditLogLine): string {
  const unsigned = JSON.stringify(line);
  return `${unsigned.slice(0, -1)},"sum":"${lineSum(unsigned)}"}\n`;
}
