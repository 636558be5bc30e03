import fc from "fast-check";
import { expect, it } from "vitest";
import { labelsFromTexts } from "../../../src/core/columns/index.ts";
import { law } from "../../support/law.ts";

it("names are sorted by code unit, each once; a row holds its name's place, -1 for none", () => {
  const { codes, names } = labelsFromTexts(["spruce", null, "cedar", "Cedar", "spruce"]);
  expect(names).toEqual(["Cedar", "cedar", "spruce"]);
  expect([...codes]).toEqual([2, -1, 1, 0, 2]);
});
law(
  "texts come back",
  [fc.array(fc.option(fc.constantFrom("b", "a", "c", "__proto__", "é", "")), { maxLength: 20 })],
  (texts) => {
    const { codes, names } = labelsFromTexts(texts);
    expect([...codes].map((code) => names[code] ?? null)).toEqual(texts);
    expect([...names]).toEqual([...new Set(names)].sort());
  },
);
