import type { GradeColumn, LabelColumn } from "../columns/index.ts";
import type { Sample } from "./sample-from-columns.ts";

/** The groups of a sample: `codes` index `names`, which holds only groups that occur, in alphabetical order (grades: lowest first). */
export type SampleGroups = {
  readonly codes: Int32Array;
  readonly names: readonly string[];
  readonly counts: readonly number[];
};

/** Groups of the sample by a label or grade column that is present on all its rows. Code order is by code point, so no locale counts. */
export function sampleGroups(column: LabelColumn | GradeColumn, sample: Sample): SampleGroups {
  const own = Array.from(sample.index, (row) => column.codes[row] ?? -1);
  const all = column.kind === "label" ? column.names : column.levels;
  const present = [...new Set(own)].filter((code) => code >= 0);
  present.sort(column.kind === "grade" ? (a, b) => a - b : (a, b) => ((all[a] ?? "") < (all[b] ?? "") ? -1 : 1));
  const place = new Map(present.map((code, at) => [code, at]));
  const codes = Int32Array.from(own, (code) => place.get(code) ?? -1);
  const counts = present.map(() => 0);
  for (const code of codes) if (code >= 0) counts[code] = (counts[code] ?? 0) + 1;
  return { codes, names: present.map((code) => all[code] ?? ""), counts };
}
