// Two spellings of one name, likely: they differ only by accents, case, spaces, hyphens, dots or underscores.
import type { Reading } from "../reading.ts";
import type { ColumnSource } from "./column-source.ts";
import { plainWordsOf } from "./plain-words-of.ts";

/** A text without what spellings of one name differ in. */
export const likeness = (text: string) =>
  text
    .normalize("NFD")
    .replace(/[\u0300-\u036f\s._\-‐‑–—]/gu, "")
    .toLowerCase();

/** The texts of a column, each once or more: its plain words as they stand, and what its cells were read as. */
function* valuesOf(source: ColumnSource, cells: readonly Reading[]): Iterable<string> {
  yield* plainWordsOf(source);
  for (const { kind, value } of cells) if (kind === "text" && typeof value === "string") yield value;
}

/** Whether two values differ by spelling alone. `settled`: names given as aliases; two of them differ because the maker says so. */
export function spellingVaries(source: ColumnSource, cells: readonly Reading[], settled: ReadonlySet<string>): boolean {
  const written = new Map<string, string>();
  for (const value of valuesOf(source, cells)) {
    const key = likeness(value);
    if (key === "") continue;
    const before = written.get(key);
    if (before !== undefined && before !== value && !(settled.has(before) && settled.has(value))) return true;
    written.set(key, value);
  }
  return false;
}
