// What a command may touch of the machine: files and the lines of stdin. An argument, so that tests hand in their own.
import type { Drawing, View } from "../core/base/index.ts";

export type Written = { readonly ok: true } | { readonly ok: false; readonly reason: string };

export type Surface = {
  readonly version: string;
  /** Bytes of a file; null when there is none, or it cannot be read. */
  readonly read: (path: string) => Promise<Uint8Array | null>;
  /** Whole or not at all; the reason when not. */
  readonly write: (path: string, content: string | Uint8Array) => Promise<Written>;
  /** A folder of files by their paths in it, whole or not at all; "taken" where something is there already. */
  readonly writeFolder: (path: string, files: ReadonlyMap<string, string>) => Promise<Written>;
  readonly stdin: () => AsyncIterable<string>;
  /** Parts of the built program, by name: "reader/reader.js". */
  readonly built: (name: string) => Promise<string | null>;
  /** The page's own components as plain HTML, out of the built program; null when it is not built. */
  readonly staticView: () => Promise<StaticView | null>;
};

/** A view as HTML, its picture as drawn. */
export type StaticView = (view: View, drawing: Drawing | null) => string;
