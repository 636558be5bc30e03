// A notebook file, read: prose and entries in file order, each with its place.
import type { Problem } from "../../core/base/index.ts";
import type { EntrySyntax } from "./entry-syntax.ts";

/** One entry of a notebook file. Offsets here count UTF-16 units within the whole file's text. */
export type Entry = {
  /** As written on the fence, or `question-1` by kind and place. */
  readonly name: string;
  readonly named: boolean;
  /** The word on the fence; one of EntryKindId, else `syntax` is null and a problem says so. */
  readonly kind: string;
  /** Line of the fence and of the body's first line, from 1. */
  readonly line: number;
  readonly bodyLine: number;
  readonly bodyFrom: number;
  readonly bodyTo: number;
  readonly body: string;
  readonly syntax: EntrySyntax | null;
  readonly problems: readonly Problem[];
};

/** A stretch of prose between entries, Markdown as written. */
export type Prose = { readonly line: number; readonly from: number; readonly to: number; readonly text: string };

/** A notebook file, read. `parts` holds prose and entries in file order. */
export type Notebook = {
  readonly text: string;
  readonly title: string;
  /** Names of record files from the front matter, and the date it was written. */
  readonly frontMatter: Readonly<Record<string, unknown>>;
  readonly parts: readonly (
    | { readonly is: "prose"; readonly prose: Prose }
    | { readonly is: "entry"; readonly entry: Entry }
  )[];
  readonly entries: readonly Entry[];
  /** Problems of the file itself: front matter, unclosed fences. */
  readonly problems: readonly Problem[];
};
