// What all who ask about a file share: what they are given, and how choices and names are said.
import type { ReadOptions } from "../read-options.ts";
import type { ReadResult } from "../read-result.ts";
import type { ImportChoice, ImportQuestion } from "./import-reading.ts";

/** Asks what is open about a reading. options: what the file was read with; bytes: of the file. */
export type Asker = (result: ReadResult, options: ReadOptions, bytes: Uint8Array) => readonly ImportQuestion[];

export const quoted = (text: string) => `“${text}”`;
export const listed = (texts: readonly string[]) =>
  texts.length < 2 ? texts.join("") : `${texts.slice(0, -1).join(", ")} and ${texts.at(-1)}`;
export const choice = (label: string, read: ReadOptions): ImportChoice => ({ label, answers: { read } });
