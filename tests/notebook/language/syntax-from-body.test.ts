import { expect, it } from "vitest";
import { type EntryKindId, placeInFile, printEntry, syntaxFromBody } from "../../../src/notebook/language/index.ts";
import { caseFile } from "../../support/case-file.ts";

it.each(caseFile("sentences.txt"))("reads $name", ({ name, text, expected }) => {
  const { syntax, problems } = syntaxFromBody(name.split(" ")[0] as EntryKindId, text);
  const places = problems.map(({ code, span }) => {
    const { line, column } = placeInFile({ body: text, bodyLine: 1 }, span);
    return `${line}:${column} ${code}`;
  });
  expect(places.length > 0 ? places.join("\n") : syntax && printEntry(syntax)).toBe(expected);
});

it.each([
  ["question", "y agianst x", "against"],
  ["question", "y against x, alowing for g", "allowing for"],
  ["records", "frm records/tops.csv", "from"],
  ["rule", "when a rises, b fals", "falls"],
] as const)("asks of the %s '%s' whether '%s' was meant", (kind, text, meant) => {
  expect(syntaxFromBody(kind, text).problems[0]?.suggestion).toBe(meant);
});

it("keeps the lines of a records entry that were understood", () => {
  const { syntax } = syntaxFromBody("records", "from a.csv\npiece top_id\npieces share tree");
  expect(syntax?.kind === "records" && syntax.lines.map(({ says }) => says)).toEqual(["from", "pieces-share"]);
});

it("says what could stand where the sentence ends too early", () => {
  expect(syntaxFromBody("dial", "9 N m from").problems[0]?.facts).toEqual({ found: "The end", expected: "a number" });
});

it.each([
  [200, 0],
  [201, 1],
  [50_000, 1],
])("reads %i brackets in one another with %i problems", (depth, wrong) => {
  const { problems } = syntaxFromBody("value", `${"(".repeat(depth)}1${")".repeat(depth)}`);
  expect(problems.map(({ code }) => code)).toEqual(wrong ? ["limit"] : []);
});

it("reads twenty thousand operators one after the other", () => {
  expect(syntaxFromBody("value", `1${" + 1".repeat(20_000)}`).problems).toEqual([]);
  expect(syntaxFromBody("value", `1${" + 1".repeat(20_001)}`).problems.map(({ code }) => code)).toEqual(["limit"]);
});
