import type { ReadOptions } from "../read-options.ts";
import { type DelimitedSource, delimitedSource } from "./delimited-source.ts";
import { fileMark } from "./edit-log-line.ts";

/** The file that edits lie over. Each takes a pass over its bytes, so it is made when first asked for and then kept. */
export type FileBehind = {
  readonly bytes: Uint8Array;
  readonly options: ReadOptions;
  readonly mark: () => string;
  /** Null for a workbook and for what is no table. */
  readonly source: () => DelimitedSource | null;
};

function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | null = null;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/** `known`: what was behind a moment ago, used again where it is of the same bytes read the same way. */
export function fileBehind(bytes: Uint8Array, options: ReadOptions, known?: FileBehind): FileBehind {
  if (known?.bytes === bytes && known.options === options) return known;
  return {
    bytes,
    options,
    mark: once(() => fileMark(bytes)),
    source: once(() => delimitedSource(bytes, options)),
  };
}
