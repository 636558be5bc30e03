// The folder as routes see it: read, list, save, compute. Everything that a route may touch is in this type.
import type { TraceStep } from "../../core/base/index.ts";
import type { PageData } from "../../notebook/share/index.ts";
import type { RecordsDesk } from "./records-desk.ts";
import type { SaveOutcome } from "./save-file.ts";
import type { FileToTake, TakenIn } from "./take-in.ts";

/** A notebook as the contents page lists it. */
export type NotebookListing = { readonly file: string; readonly title: string; readonly written: string | null };

/** Positions of dials by name, in the unit in which each is shown. */
export type DialPositions = ReadonlyMap<string, number>;

/** What a dated copy is asked with. */
export type ShareWish = {
  readonly file: string;
  readonly text: string;
  readonly date: string;
  readonly without: readonly string[];
};

/** The copy as a file, or why there is none: each with its sentence. */
export type SharedCopy =
  | { readonly name: string; readonly html: string }
  | { readonly problems: readonly { readonly code: string; readonly sentence: string }[] };

export type Workspace = {
  readonly notebooks: () => Promise<readonly NotebookListing[]>;
  /** Bytes of a file of the workspace; null when it is not there or may not be read. */
  readonly read: (name: string) => Promise<Uint8Array | null>;
  readonly save: (name: string, bytes: Uint8Array, base: string) => Promise<SaveOutcome>;
  /** Takes new files into the folder, all together or none. */
  readonly takeIn: (files: readonly FileToTake[]) => Promise<TakenIn>;
  /** Paths of the descriptions of tables in `records`. */
  readonly descriptions: () => Promise<readonly string[]>;
  /** Everything the page shows of a notebook whose text is given. */
  readonly compute: (file: string, text: string, dials: DialPositions) => Promise<PageData>;
  readonly trace: (file: string, text: string, entry: string) => Promise<readonly TraceStep[]>;
  readonly share: (wish: ShareWish) => Promise<SharedCopy>;
  /** Record files with the edits of their logs. */
  readonly records: Omit<RecordsDesk, "close">;
  /** The process that writes in this folder in our place: while there is one, nothing is written here. */
  readonly holder: () => Promise<number | null>;
  /** Calls back with the name of a file that something changed; the function given back ends it. */
  readonly onChange: (listener: (file: string) => void) => () => void;
  /** Waits for saves under way, stops watching. */
  readonly close: () => Promise<void>;
};
