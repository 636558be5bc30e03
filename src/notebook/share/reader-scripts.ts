// Which of the three readers a copy carries: no more program than it has a use for.
import { notebookFromOutline } from "../language/index.ts";
import { dependents, touches } from "./dependents.ts";
import type { EmbeddedCopy } from "./embedded-copy.ts";

/** Opens reasons on paper; turns dials too, with the engine; draws pictures anew as well. */
export type ReaderScripts = { readonly still: string; readonly turning: string; readonly drawing: string };

const QUIET: ReadonlySet<string> = new Set(["columns", "value", "dial", "setting", "use", "lexicon"]);

/** Without a dial the still one; the drawing one where an entry that may have a picture hangs on a dial. */
export function readerNeeded(copy: EmbeddedCopy): keyof ReaderScripts {
  const { entries } = notebookFromOutline(copy.notebookText, copy.result.notebook, copy.outline);
  const dials = new Set(entries.filter((entry) => entry.syntax?.kind === "dial").map((entry) => entry.name));
  if (dials.size === 0) return "still";
  const follow = dependents(entries, dials);
  return entries.some((entry) => !QUIET.has(entry.kind) && touches(entry.syntax, follow)) ? "drawing" : "turning";
}
