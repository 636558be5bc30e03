import type { Entry } from "../../../language/index.ts";
import type { EntryPart } from "../../entry-kind.ts";

/** Its families as a list in prose. */
export function viewLexicon(entry: Entry): EntryPart | null {
  if (entry.syntax?.kind !== "lexicon") return null;
  const text = entry.syntax.families.map(({ family, words }) => `- ${family}: ${words.join(", ")}`).join("\n");
  return { view: { kind: "prose", text } };
}
