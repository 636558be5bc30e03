import type { EntryResult } from "../../notebook/engine/index.ts";
import type { PageData } from "../../notebook/share/index.ts";

/** The result of each part, undefined for prose. By place: a name alone does not tell `records tops` from `columns tops`. */
export function resultsByPart(data: PageData): readonly (EntryResult | undefined)[] {
  let at = 0;
  return data.parts.map((part) => (part.is === "entry" ? data.result.entries[at++] : undefined));
}
