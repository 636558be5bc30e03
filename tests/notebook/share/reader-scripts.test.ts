import { expect, it } from "vitest";
import { notebookOutline } from "../../../src/notebook/language/index.ts";
import { readerNeeded } from "../../../src/notebook/share/reader-scripts.ts";
import { smallCopy } from "./small-copy.ts";

const block = (fence: string, body: string) => `\`\`\`${fence}\n${body}\n\`\`\`\n\n`;
const needed = (...blocks: string[]) => {
  const notebookText = blocks.join("");
  const { frontMatter: _frontMatter, ...outline } = notebookOutline(notebookText, "small.md");
  return readerNeeded({ ...smallCopy(), notebookText, outline });
};
const dial = block("dial turned", "9 mm from 5 mm to 15 mm");
const records = block("records tops", "from tops.csv");

it("is still where there is no dial", () => {
  expect(needed(records, block("question", "mass against width"))).toBe("still");
});

it("turns without drawing where a dial reaches amounts and columns only", () => {
  expect(
    needed(
      dial,
      records,
      block("value twice", "2 * turned"),
      block("columns tops", "far = width + twice"),
      block("question", "mass against width"),
    ),
  ).toBe("turning");
});

it.each([
  ["a question", block("question", "mass against far")],
  ["a condition", block("question", "mass against width, where width > twice")],
  ["a rule", block("rule", "when far rises, mass rises")],
  ["a picture", block("picture", "mass against far")],
])("draws where a dial reaches %s, by way of a value and a column", (_, asked) => {
  expect(
    needed(block("columns tops", "far = width + twice"), block("value twice", "2 * turned"), dial, records, asked),
  ).toBe("drawing");
});
