// Patterns that could take more than linear time on input: a repetition within a repetition, or one that runs to the end from any start.
import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";

const src = new URL("../../src/", import.meta.url);
const LITERAL =
  /(?:^|[(,=:?!&|{};[]|\breturn|=>)\s*\/((?:\\.|\[(?:\\.|[^\]\\\n])*\]|[^/\\[\n*])(?:\\.|\[(?:\\.|[^\]\\\n])*\]|[^/\\[\n])*)\/[dgimsuvy]*/gm;

/** The patterns of a source text, comments aside. */
const patternsIn = (text: string): string[] =>
  [...text.replace(/^\s*(?:\/\/|\*|\/\*).*$/gm, "").matchAll(LITERAL)].map(([, pattern = ""]) => pattern);

const isEndless = (pattern: string, at: number) => /^(?:[*+]|\{\d+,\})/.test(pattern.slice(at, at + 12));

/** Whether an endless repetition stands inside another one. */
function isNested(pattern: string): boolean {
  const open: boolean[] = [];
  let endlessInside = false;
  for (let at = 0; at < pattern.length; at++) {
    const char = pattern[at];
    if (char === "\\") at++;
    else if (char === "[")
      for (at++; at < pattern.length && pattern[at] !== "]"; at++) at += pattern[at] === "\\" ? 1 : 0;
    else if (char === "(") {
      open.push(endlessInside);
      endlessInside = false;
    } else if (char === ")") {
      if (endlessInside && isEndless(pattern, at + 1)) return true;
      endlessInside = (open.pop() ?? false) || endlessInside;
    }
    if (isEndless(pattern, at + 1)) endlessInside = true;
  }
  return false;
}

/** Whether a repetition that may begin anywhere must reach the end: at each start it runs to the first character that it is not for. */
const isSearch = (pattern: string): boolean => !pattern.startsWith("^") && /(?:[*+]|\{\d+,\})\$$/.test(pattern);

/** These begin with a character that does not repeat, or see a short text alone. */
const KNOWN = new Set([
  "\\n[ \\t]*$",
  "\\.[^./]*$",
  "\\.[^.]*$",
  "\\.[^.]+$",
  "[\\p{L}\\p{N}_°%/-]*$", // two hundred characters at most, as the next two
  "[\\p{L}]+\\s+[\\p{L}]*$",
  "[\\p{L}]+\\s+[\\p{L}]+\\s+[\\p{L}]*$",
  "0+$", // digits of one printed number
  "[./·-]+$", // forty characters at most
]);

it("has no pattern that takes more than linear time on input", () => {
  const paths = readdirSync(src, { recursive: true, encoding: "utf8" }).filter((path) => /\.tsx?$/.test(path));
  const found = paths.flatMap((path) =>
    patternsIn(readFileSync(new URL(path, src), "utf8")).map((pattern) => [path, pattern] as const),
  );
  expect(found.length).toBeGreaterThan(150);
  expect(found.filter(([, pattern]) => isNested(pattern) || (isSearch(pattern) && !KNOWN.has(pattern)))).toEqual([]);
});

it.each(["(a+)+b", "(?:x*|y)*", "([ab]+c?){2,}"])("sees a repetition within a repetition: %s", (pattern) =>
  expect(isNested(pattern)).toBe(true),
);
it.each(["(?:a+)?b", "([ab]+)c*", "[(*+]+\\)*", "(?:ab){2,3}"])("passes over %s", (pattern) =>
  expect(isNested(pattern)).toBe(false),
);
it("sees patterns where they stand, and none in comments", () =>
  expect(patternsIn('const a = /x+/g;\nb.replace(/[/]y/, "");\n// like /z+/\nconst half = a / 2 / b;')).toEqual([
    "x+",
    "[/]y",
  ]));
