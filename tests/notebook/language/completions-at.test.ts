import { expect, it } from "vitest";
import { completionsAt } from "../../../src/notebook/language/index.ts";

const names = {
  columns: ["density", "species"],
  functions: ["bar_stiffness"],
  methods: ["welch", "errors-in-variables"],
  units: ["mm", "m", "GPa"],
  tables: ["tops", "earlier-tops"],
};
const labels = (kind: string, text: string) => completionsAt(text, kind, text.length, names).map(({ label }) => label);

it.each([
  ["question", "density ", ["against", "across", "beside", "word"]],
  ["question", "density ag", ["against"]],
  ["question", "density against d", ["density"]],
  ["question", "density against species, ", ["allowing for", "within", "as a power law", "where", "by", "of"]],
  ["question", "density against species, allowing f", ["allowing for"]],
  ["question", "density across species by ", ["welch", "errors-in-variables"]],
  ["question", "density across species of ", ["tops", "earlier-tops"]],
  ["value", "2 m", ["mm", "m"]],
  ["records", "from a.csv\npi", ["piece is", "pieces share"]],
  ["records", "from a.csv\npiece is ", ["density", "species"]],
  ["rule", "when density r", ["rises"]],
  ["dial", "9 mm ", ["from"]],
])("offers in a %s after '%s' what fits: %j", (kind, text, expected) => {
  expect(labels(kind, text)).toEqual(expect.arrayContaining(expected));
});

it("offers no words of a question inside a formula", () => {
  expect(labels("value", "density ")).not.toContain("against");
});

it("replaces what is begun, from its first letter", () => {
  expect(completionsAt("density ag", "question", 10, names).map(({ from }) => from)).toEqual([8]);
});

it("offers nothing for a kind there is not", () => {
  expect(labels("constructor", "a ")).toEqual([]);
});
