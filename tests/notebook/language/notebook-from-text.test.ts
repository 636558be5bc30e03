import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, it } from "vitest";
import { entryKindIds, type Notebook, notebookFromText } from "../../../src/notebook/language/index.ts";
import { law } from "../../support/law.ts";

const folder = new URL("../../../notebooks/", import.meta.url);
const demos = readdirSync(folder).filter((name) => name.endsWith(".md"));
const demo = (name: string) => readFileSync(new URL(name, folder), "utf8");
const allProblems = ({ problems, entries }: Notebook) => [...problems, ...entries.flatMap((entry) => entry.problems)];
const read = (text: string) => notebookFromText(text, "n.md");

it.each(demos)("reads every entry of %s without a problem", (name) => {
  const notebook = notebookFromText(demo(name), name);
  expect(allProblems(notebook)).toEqual([]);
  for (const { bodyFrom, bodyTo, body, bodyLine } of notebook.entries) {
    expect(notebook.text.slice(bodyFrom, bodyTo)).toBe(body);
    expect(notebook.text.slice(0, bodyFrom).split("\n")).toHaveLength(bodyLine);
  }
});

it("reads prose and entries in file order, with their lines", () => {
  const { parts, title } = read("---\ntitle: T\n---\nOne.\n\n```value a\n1\n```\nTwo.\n");
  expect(title).toBe("T");
  expect(
    parts.map((part) =>
      part.is === "prose" ? [part.prose.line, part.prose.text.trim()] : [part.entry.line, part.entry.name],
    ),
  ).toEqual([
    [4, "One."],
    [6, "a"],
    [9, "Two."],
  ]);
});

it("names an entry without a name by its kind and place", () => {
  expect(
    read("```question\na across b\n```\n```value v\n1\n```\n```question\nc across d\n```").entries.map(
      ({ name }) => name,
    ),
  ).toEqual(["question-1", "v", "question-2"]);
});

it("lets columns go by the name of their table", () => {
  expect(allProblems(read("```records tops\nfrom a.csv\n```\n```columns tops\na = 1\n```"))).toEqual([]);
});

it.each([
  ["```value a\n1\n```\n```dial a\n1 from 0 to 2\n```", "4:9 name-taken"],
  ["```qestion\na across b\n```", "1:4 unknown-entry-kind"],
  ["```value a\n1", "1:4 unclosed-fence"],
  ["text\n\n```value a\n1 +\n```", "4:4 syntax"],
  ["```value a b\n1\n```", "1:10 syntax"],
  ["---\ntitle: [a\n---\n", "2:10 front-matter"],
  ["---\ntitle: !!js/function x\n---\n", "2:8 front-matter"],
  ["---\nrecords: tops\n---\n", "2:1 front-matter"],
  ["---\ntitle: a\nthumbrule: 999\n---\n", "3:1 front-matter"],
  ["---\ntitle: a\n", "1:1 front-matter"],
])("tells what is wrong in %j: %s", (text, expected) => {
  expect(allProblems(read(text)).map(({ line, column, code }) => `${line}:${column} ${code}`)).toEqual([expected]);
});

it.each([
  "```js\nlet a;\n```",
  "```\na\n```",
  "> ```value a\n> 1\n> ```",
  "```{value}\n1\n```",
  "    ```value a\n    1\n    ```",
])("takes %j for prose", (text) => {
  expect(read(text).entries).toEqual([]);
  expect(allProblems(read(text))).toEqual([]);
});

it("reads names of objects as names like any other", () => {
  const { frontMatter, entries } = read(
    "---\n__proto__: {polluted: 1}\nconstructor: x\n---\n```value constructor\n1\n```\n```value __proto__\n1\n```",
  );
  expect(Object.keys(frontMatter)).toEqual(["__proto__", "constructor"]);
  expect(entries.map(({ name }) => name)).toEqual(["constructor", "__proto__"]);
  expect(({} as { polluted?: number }).polluted).toBeUndefined();
});

it("refuses aliases that grow", () => {
  const bomb = `---\na: &a [x,x,x,x,x,x,x,x,x]\n${"bcdefg"
    .split("")
    .map((each, i) => `${each}: &${each} [${`*${"abcdefg"[i]},`.repeat(9)}]`)
    .join("\n")}\n---\n`;
  expect(allProblems(read(bomb)).map(({ code }) => code)).toEqual(["front-matter"]);
});

it.each([
  [">".repeat(100), []],
  [`one\n${">".repeat(101)}`, ["2 limit"]],
  [`one\n\n${"- ".repeat(101)}`, ["3 limit"]],
  [Array.from({ length: 400 }, (_, i) => `${" ".repeat(i)}- a`).join("\n"), ["302 limit"]],
])("reads quotations and lists in one another a hundred deep", (text, expected) => {
  const notebook = read(`\`\`\`value a\n1\n\`\`\`\n${text}`);
  expect(notebook.problems.map(({ line, code }) => `${line - 3} ${code}`)).toEqual(expected);
  expect(notebook.entries).toHaveLength(1);
});

function staysInside(text: string): void {
  const notebook = read(text);
  const lines = text.split("\n");
  for (const { line, column, length } of allProblems(notebook)) {
    expect(
      line >= 1 && line <= lines.length && column >= 1 && column <= (lines[line - 1] ?? "").length + 1 && length >= 1,
    ).toBe(true);
  }
  expect(
    notebook.parts
      .map((part) => (part.is === "prose" ? part.prose.text : text.slice(part.entry.bodyFrom, part.entry.bodyTo)))
      .every((each) => text.includes(each)),
  ).toBe(true);
}

law(
  "any text is read, and every problem has its place in it",
  [fc.string({ unit: "binary", maxLength: 400 })],
  staysInside,
);
const scrap = fc.constantFrom(
  "a",
  "against ",
  "across ",
  "when ",
  " is ",
  "rises",
  ", ",
  "(",
  ")",
  '"',
  "`",
  "```",
  "```value v",
  "\n",
  "\r\n",
  "in ",
  "3/32 ",
  "mm ",
  "by ",
  "of ",
  "---\n",
  "mean of ",
  "if ",
  "then ",
  "±",
  "has more ",
  "stated ",
  "2024-05-02",
  "𝒳",
  "=",
  "^",
  "-",
  ": ",
  "from ",
  "\u0000",
);
law(
  "any run of words in an entry is read, and every problem has its place in it",
  [fc.constantFrom(...entryKindIds), fc.array(scrap, { maxLength: 30 })],
  (kind, words) => staysInside(`\`\`\`${kind} x\n${words.join("")}\n\`\`\`\n`),
  1000,
);

it.each(demos)("reads %s cut off at any letter", (name) => {
  const text = demo(name);
  for (let end = 0; end <= text.length; end += 7) staysInside(text.slice(0, end));
});
