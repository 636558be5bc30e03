import { expect, it } from "vitest";
import { compareCopies } from "../../../src/notebook/share/compare-copies.ts";
import type { EmbeddedCopy } from "../../../src/notebook/share/embedded-copy.ts";
import { smallCopy } from "./small-copy.ts";

const changed = (from: string, to: string) =>
  JSON.parse(JSON.stringify(smallCopy()).replaceAll(from, to)) as EmbeddedCopy;

it("finds nothing between a copy and itself", () => {
  expect(compareCopies(smallCopy(), smallCopy())).toEqual({ same: true, changes: [] });
});

it("names the record and the column of a changed cell", () => {
  expect(compareCopies(smallCopy(), changed('[2,"2.38"', '[2,"2.83"')).changes).toEqual([
    { entry: "tops", what: "thickness of T-2", before: '"2.38"', after: '"2.83"' },
  ]);
});

it("names the answer whose number changed, before and after", () => {
  expect(compareCopies(smallCopy(), changed("-0.17", "-0.16")).changes).toEqual([
    { entry: "question-1 ", what: "estimate.0.value", before: "-0.17", after: "-0.16" },
  ]);
});

it("says which entries and records are new or gone, and that the date moved", () => {
  const later = changed("2026-03-14", "2026-04-01");
  const without = { ...later, result: { ...later.result, entries: [] }, tables: [] };
  expect(compareCopies(smallCopy(), without).changes.map(({ what, after }) => [what, after])).toEqual([
    ["date", '"2026-04-01"'],
    ["record table", "absent"],
    ["entry", "absent"],
  ]);
});
