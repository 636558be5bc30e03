import fc from "fast-check";
import { expect, it } from "vitest";
import { newEntry, partText, withPartText } from "../../../src/app/state/part-text.ts";

it("replaces a part and leaves every other byte, line ends too", () => {
  const text = "---\r\ntitle: x\r\n---\r\n```value a\r\n1 mm\r\n2 mm\r\n```\r\nend";
  const from = text.indexOf("1 mm");
  const to = text.indexOf("```\r\nend");
  expect(partText(text, { is: "entry", from, to })).toBe("1 mm\n2 mm");
  expect(withPartText(text, { is: "entry", from, to }, "3 mm\n4 mm")).toBe(
    "---\r\ntitle: x\r\n---\r\n```value a\r\n3 mm\r\n4 mm\r\n```\r\nend",
  );
});

it("gives back the same file when nothing was changed, wherever the part lies", () => {
  fc.assert(
    fc.property(fc.array(fc.constantFrom("a", "\n", "b c", " ")), fc.nat(40), fc.nat(40), (bits, a, b) => {
      const text = bits.join("");
      const [from, to] = [Math.min(a, b, text.length), Math.min(Math.max(a, b), text.length)];
      expect(withPartText(text, { is: "prose", from, to }, partText(text, { is: "entry", from, to }))).toBe(text);
    }),
    { seed: 20260314 },
  );
});

it("puts a new entry at the end with the file's own line ends, and nothing else changes", () => {
  for (const text of ["Prose.", "Prose.\n", "Prose.\r\n"]) {
    const begun = newEntry(text, "question");
    const whole = withPartText(begun.text, begun.place, "a against b");
    const end = text.endsWith("\r\n") ? "\r\n" : "\n";
    expect(whole).toBe(`Prose.${end}${end}\`\`\`question${end}a against b${end}\`\`\`${end}`);
  }
});

it("keeps a line of backquotes inside the entry that it was written in", () => {
  const text = "```value a\n1 mm\n```\nend";
  const place = { is: "entry", from: text.indexOf("1 mm"), to: text.indexOf("```\nend") } as const;
  expect(withPartText(text, place, "2 mm\n```\n# gone")).toBe("```value a\n2 mm\n    ```\n# gone\n```\nend");
  expect(withPartText(text, { ...place, is: "prose" }, "```")).toBe("```value a\n```\n```\nend");
});
