import { expect, it } from "vitest";
import { functionCatalogue, groupFunctions } from "../../../src/core/formula/index.ts";
import {
  entryKindIds,
  notebookFromText,
  sentenceForms,
  syntaxFromBody,
  wordsPage,
} from "../../../src/notebook/language/index.ts";

it.each(sentenceForms)("the example of $form can be written as it stands", ({ kind, example }) => {
  const { syntax, problems } = syntaxFromBody(kind, example);
  expect(problems).toEqual([]);
  expect(syntax?.kind).toBe(kind);
});

it.each([...functionCatalogue, ...groupFunctions])(
  "the example of the function $id can be written as it stands",
  ({ example }) => {
    expect(syntaxFromBody("value", example).problems).toEqual([]);
  },
);

it("tells of every kind of entry", () => {
  expect(new Set(sentenceForms.map(({ kind }) => kind))).toEqual(new Set(entryKindIds));
});

it("is itself a notebook without a fault", () => {
  const { entries, problems } = notebookFromText(wordsPage(), "words.md");
  expect([...problems, ...entries.flatMap((entry) => entry.problems)]).toEqual([]);
  expect(entries).toHaveLength(sentenceForms.length);
});
