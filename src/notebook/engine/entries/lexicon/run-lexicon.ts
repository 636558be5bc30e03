import type { EntrySyntax } from "../../../language/index.ts";

type Families = Extract<EntrySyntax, { readonly kind: "lexicon" }>["families"];

/** Families by name; the same family again adds its words. */
export function runLexicon(families: Families): ReadonlyMap<string, readonly string[]> {
  const words = new Map<string, readonly string[]>();
  for (const each of families) words.set(each.family, [...new Set([...(words.get(each.family) ?? []), ...each.words])]);
  return words;
}
