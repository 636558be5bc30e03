// Spellings that vary are found among words made to collide, too.
import { expect, test } from "vitest";
import { readTable } from "../../../../src/core/records/index.ts";
import { stretchHash } from "../../../../src/core/records/source/text-places.ts";

const [first, second] = ["obvgufzns", "bsfyuzmvh"] as const;

const warned = (words: readonly string[]) =>
  readTable(new TextEncoder().encode(`board,mm\n${words.map((word) => `${word},1`).join("\n")}`), "a.csv")
    .warnings.map(({ code }) => code)
    .includes("spelling-varies");
const capital = (word: string) => word.charAt(0).toUpperCase() + word.slice(1);

test("the two words have the same hash", () => {
  expect(stretchHash(first, 0, first.length)).toBe(stretchHash(second, 0, second.length));
});

test("two words of the same hash are no spellings of one", () => {
  expect(warned(["maple", first, second])).toBe(false);
});

test("a spelling varies from either of two words of the same hash", () => {
  expect(warned([first, second, capital(first)])).toBe(true);
  expect(warned([first, second, capital(second)])).toBe(true);
});
