// Whether a column of texts holds notes in words or names.
import type { LabelColumn } from "./column.ts";

const WORDS_BY_NAME = /^(notes?|remarks?|comments?|words?|sound|impression|description|notas?|bemerkung(en)?)$/;
const SPACE = /\s/;

function wordsIn(text: string): number {
  let count = 0;
  let inside = false;
  for (let at = 0; at < text.length; at++) {
    const space = SPACE.test(text.charAt(at));
    if (!space && !inside) count += 1;
    inside = !space;
  }
  return count;
}

/** Whether texts are notes and not names: called so, or mostly different and of three words or more on average. labels: the texts, each different one once. */
export function isWords(name: string, { codes, names }: Pick<LabelColumn, "codes" | "names">): boolean {
  if (names.length === 0) return false;
  if (name.split("_").some((word) => WORDS_BY_NAME.test(word))) return names.some((text) => /[\s,;]/.test(text));
  const given = codes.reduce((count, code) => (code < 0 ? count : count + 1), 0);
  if (names.length <= given / 2) return false;
  const lengths = names.map(wordsIn);
  return codes.reduce((sum, code) => sum + (lengths[code] ?? 0), 0) / given >= 3;
}
