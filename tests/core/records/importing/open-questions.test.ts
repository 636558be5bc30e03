import { expect, it } from "vitest";
import { withAnswer } from "../../../../src/app/state/with-answer.ts";
import type { ImportAnswers } from "../../../../src/core/records/importing/import-reading.ts";
import { openQuestions } from "../../../../src/core/records/importing/open-questions.ts";
import type { ReadOptions } from "../../../../src/core/records/read-options.ts";
import { readTable } from "../../../../src/core/records/read-table.ts";
import { rowsOf } from "../../../support/rows-of.ts";

const none: ImportAnswers = { read: {}, about: {} };
const encoded = (text: string) => new TextEncoder().encode(text);
const asked = (bytes: Uint8Array, options: ReadOptions = {}) =>
  openQuestions(readTable(bytes, "tops.csv", options), options, bytes);
const labels = (bytes: Uint8Array, options: ReadOptions = {}) =>
  asked(bytes, options).flatMap(({ choices }) => choices.map(({ label }) => label));
/** What is asked once each question was answered by its choice at `place`. */
function askedAfter(bytes: Uint8Array, place: number) {
  const answers = asked(bytes).reduce((held, { choices }) => withAnswer(held, choices.at(place)!), none);
  return { answers, open: asked(bytes, answers.read) };
}

it("asks which mark is decimal, and shows both readings of the cells in question", () => {
  const bytes = encoded('Piece,Mass (g)\nA,"1,234"\nB,"2,310"\n');
  expect(asked(bytes)).toMatchObject([{ id: "decimal", columns: ["Mass"] }]);
  expect(labels(bytes)).toEqual([
    "The comma: 1,234 is 1.234 g, 2,310 is 2.31 g",
    "The point: 1,234 is 1234 g, 2,310 is 2310 g",
  ]);
});

it("asks for the decimal mark once, whichever columns need it", () => {
  expect(asked(encoded('Piece,Mass (g),Width (mm)\nA,"1,234","2,345"\n'))).toMatchObject([
    { id: "decimal", columns: ["Mass", "Width"] },
  ]);
});

it("asks whether the day or the month comes first, with the month as a word", () => {
  expect(labels(encoded("Piece,Bought on\nA,3/5/2024\nB,4/6/2024\n"))).toEqual([
    "The day: 3/5/2024 is 3 May 2024, 4/6/2024 is 4 June 2024",
    "The month: 3/5/2024 is 5 March 2024, 4/6/2024 is 6 April 2024",
  ]);
});

it("asks whose note names are used where there is an H", () => {
  expect(labels(encoded("Piece,Tap note\nA,H2\nB,B2\nC,A2\n"))).toEqual([
    "German: H2 is B2, B2 is Bb2",
    "English: H2 is not readable, B2 is B2",
  ]);
});

it("asks about the letters of a file that does not say how they are stored", () => {
  const bytes = Uint8Array.from(encoded("Piece,Wood\nA,F_hre\nB,Zeder\n"), (byte) => (byte === 95 ? 0xf6 : byte));
  expect(labels(bytes)).toEqual(["Western European (Windows-1252): A,Föhre", "UTF-8: A,F\ufffdhre"]);
});

it("asks whether spellings mean the same, and which is the name", () => {
  const bytes = encoded("Piece,Wood\nA,Red Cedar\nB,red-cedar\nC,Red Cedar\nD,spruce\n");
  expect(asked(bytes).map(({ sentence }) => sentence)).toEqual([
    "Do these mean the same in “Wood”? “Red Cedar” (2 records) and “red-cedar” (1 record).",
  ]);
  const { answers, open } = askedAfter(bytes, 0);
  expect(open).toEqual([]);
  const [table] = readTable(bytes, "tops.csv", answers.read).tables;
  expect(rowsOf(table!).map(([, wood]) => wood?.value)).toEqual(["Red Cedar", "Red Cedar", "Red Cedar", "spruce"]);
});

it("believes the maker that two spellings are two things, and asks no more", () => {
  const bytes = encoded("Piece,Wood\nA,Red Cedar\nB,red-cedar\n");
  const { answers, open } = askedAfter(bytes, -1);
  expect(open).toEqual([]);
  expect(readTable(bytes, "tops.csv", answers.read).warnings).toEqual([]);
});

it("asks again when a third spelling comes, and leads the earlier ones on to the name chosen then", () => {
  const first = askedAfter(encoded("Piece,Wood\nA,Red Cedar\nB,red-cedar\n"), 0).answers;
  const bytes = encoded("Piece,Wood\nA,Red Cedar\nB,red-cedar\nC,RED_CEDAR\n");
  const [question] = asked(bytes, first.read);
  const { read } = withAnswer(first, question!.choices.find(({ label }) => label.includes("RED_CEDAR"))!);
  expect(asked(bytes, read)).toEqual([]);
  const [table] = readTable(bytes, "tops.csv", read).tables;
  expect(rowsOf(table!).map(([, wood]) => wood?.value)).toEqual(["RED_CEDAR", "RED_CEDAR", "RED_CEDAR"]);
});

it("does not offer to tell apart what differs by case alone", () => {
  const bytes = encoded("Piece,Wood\nA,Cedar\nB,cedar\nC,Cedar\n");
  expect(labels(bytes)).toEqual(["They all mean “Cedar”", "They all mean “cedar”"]);
  expect(askedAfter(bytes, 1).open).toEqual([]);
});

it.each([0, 1])("asks each question once: none is open after its answer %i", (place) => {
  const bytes = encoded('Piece,Mass (g),On,Tap note\nA,"1,234",3/5/2024,H2\nB,"2,345",4/5/2024,B2\n');
  expect(asked(bytes).map(({ id }) => id)).toEqual(["decimal", "day-first", "note-names"]);
  expect(askedAfter(bytes, place).open).toEqual([]);
});

it("says before the answer which cells of other columns it would take away", () => {
  const bytes = encoded("Piece;Thickness (mm);Mass (g)\nA;2.31;1,300\nB;2.4;1,301\nC;2.5;\nD;2,6;1,302\n");
  expect(asked(bytes)[0]?.choices.map(({ label }) => label)).toEqual([
    "The comma: 1,300 is 1.3 g, 1,301 is 1.301 g, 1,302 is 1.302 g. Then 3 cells of “Thickness” cannot be read",
    "The point: 1,300 is 1300 g, 1,301 is 1301 g, 1,302 is 1302 g. Then 1 cell of “Thickness” cannot be read",
  ]);
});

it("asks where the other columns decided the mark, so that a wrong guess can be put right", () => {
  const bytes = encoded("Piece;Thickness (mm);Mass (g)\nA;2.31;1,300\nB;2.4;1,301\nC;2.5;1,302\n");
  expect(asked(bytes)).toMatchObject([{ id: "decimal", code: "decimal-from-other-columns", columns: ["Mass"] }]);
  expect(asked(bytes)[0]?.choices[0]?.label).toContain("Then 3 cells of “Thickness” cannot be read");
  expect(asked(bytes, { decimal: "." })).toEqual([]);
});
