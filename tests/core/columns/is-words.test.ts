import { expect, it } from "vitest";
import { labelsFromTexts } from "../../../src/core/columns/index.ts";
import { isWords } from "../../../src/core/columns/is-words.ts";

const words = (name: string, ...texts: readonly (string | null)[]) => isWords(name, labelsFromTexts(texts));

it("three words a cell on average, mostly different, are notes; fewer are names", () => {
  expect(words("tone", "dry and open", "quick to speak", null)).toBe(true);
  expect(words("tone", "dry and", "quick to speak")).toBe(false);
  expect(words("tone", "dry and  open", "\tquick to speak ")).toBe(true);
});
it("long names that come again are names", () =>
  expect(words("wood", "red cedar of Canada", "red cedar of Canada")).toBe(false));
it("a column called notes is notes as soon as a cell has more than one word", () => {
  expect(words("tonal_notes", "dry", "bright, quick")).toBe(true);
  expect(words("tonal_notes", "dry", "bright")).toBe(false);
});
it("nothing written is no notes", () => expect(words("notes", null)).toBe(false));
