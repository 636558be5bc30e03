import fc from "fast-check";
import { expect, it } from "vitest";
import { notebookFromText, withEntryBody } from "../../../src/notebook/language/index.ts";
import { law } from "../../support/law.ts";

const text =
  "---\r\ntitle:   Spaced\r\n---\r\nProse \t\r\n\r\n``` question  all \r\na across b\r\n```\r\n~~~value v\r\n~~~\r\nend";

it("keeps every byte outside the entry, and the line ends of the file", () => {
  expect(withEntryBody(notebookFromText(text, "n.md"), "all", "c\nacross d")).toBe(
    text.replace("a across b", "c\r\nacross d"),
  );
});

it("fills an entry that was empty", () => {
  expect(withEntryBody(notebookFromText(text, "n.md"), "v", "2 mm")).toBe(
    text.replace("~~~value v\r\n", "~~~value v\r\n2 mm\r\n"),
  );
});

law(
  "a body that was written is the body that is read",
  [
    fc.array(fc.constantFrom("a", " b", "", "```", "~~~", "```value x", "é", "---", "    c"), {
      minLength: 1,
      maxLength: 6,
    }),
    fc.constantFrom("\n", "\r\n"),
  ],
  (lines, lineEnd) => {
    const file = `one${lineEnd}\`\`\`value v${lineEnd}1${lineEnd}\`\`\`${lineEnd}two`;
    const edited = withEntryBody(notebookFromText(file, "n.md"), "v", lines.join("\n"));
    const { entries } = notebookFromText(edited, "n.md");
    const kept = lines.map((line) => (/^ {0,3}(`{3,}|~{3,})$/.test(line) ? `    ${line.trim()}` : line)).join(lineEnd);
    expect(entries.map(({ body }) => body.replace(/(\r?\n)$/, ""))).toEqual([kept.replace(/(\r?\n)$/, "")]);
    expect(edited.startsWith(`one${lineEnd}\`\`\`value v${lineEnd}`) && edited.endsWith(`\`\`\`${lineEnd}two`)).toBe(
      true,
    );
  },
);
