// Spellings of a column that may mean one name: equal but for accents, case, spaces, hyphens, dots and underscores.
import { kindAt, valueAt } from "../cells.ts";
import type { RecordColumn } from "../read-result.ts";
import { likeness } from "../readers/spelling-varies.ts";

/** A spelling and how many records have it. */
export type Spelling = { readonly text: string; readonly count: number };

/** Sets of spellings that are alike, the commonest spelling of each first. */
export function spellingClusters({ cells }: RecordColumn): readonly (readonly Spelling[])[] {
  const clusters = new Map<string, Map<string, number>>();
  for (let row = 0; row < cells.length; row++) {
    const value = kindAt(cells, row) === "text" ? valueAt(cells, row) : null;
    if (typeof value !== "string" || likeness(value) === "") continue;
    const counts = clusters.get(likeness(value)) ?? new Map<string, number>();
    clusters.set(likeness(value), counts.set(value, (counts.get(value) ?? 0) + 1));
  }
  return [...clusters.values()]
    .filter((counts) => counts.size > 1)
    .map((counts) => [...counts].map(([text, count]) => ({ text, count })).sort((a, b) => b.count - a.count));
}
