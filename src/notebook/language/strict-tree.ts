// A sentence parsed without mending: its tree, or the place where it stops being one. Takes time in proportion to the text, whatever it is.
import type { Tree } from "@lezer/common";
import type { LRParser } from "@lezer/lr";

export type StrictTree =
  | { readonly tree: Tree; readonly stoppedAt: null }
  | { readonly tree: null; readonly stoppedAt: number };

/** The tree of `text`, or the offset of the first token that cannot stand there (the text's length where it ends too early). */
export function strictTree(parser: LRParser, text: string): StrictTree {
  try {
    return { tree: parser.configure({ strict: true }).parse(text), stoppedAt: null };
  } catch (stop) {
    // The parser of the library tells the place in its message, and nowhere else.
    const place = stop instanceof SyntaxError ? /^No parse at (\d+)$/.exec(stop.message)?.[1] : undefined;
    if (place === undefined) throw stop;
    return { tree: null, stoppedAt: Math.min(Number(place), text.length) };
  }
}
