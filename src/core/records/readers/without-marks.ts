// Marks about a value: limits, "about", a question mark, a footnote mark.
const BEFORE: readonly (readonly [code: string, spellings: readonly string[]])[] = [
  ["below-limit", ["<=", "<", "≤"]],
  ["above-limit", [">=", ">", "≥"]],
  ["approximate", ["~", "≈"]],
];
const WORDS = ["about", "approx.", "approx", "ca.", "ca", "c.", "circa", "etwa", "env.", "env", "aprox.", "aprox"];

/** The text without its marks, and their codes. */
export function withoutMarks(cell: string): { text: string; marks: string[] } {
  let text = cell;
  const marks: string[] = [];
  for (const [code, spellings] of BEFORE) {
    const spelled = spellings.find((spelling) => text.startsWith(spelling));
    if (spelled === undefined) continue;
    marks.push(code);
    text = text.slice(spelled.length).trimStart();
  }
  const lower = text.slice(0, 8).toLowerCase();
  const word = WORDS.find((one) => lower.startsWith(one) && (one.endsWith(".") || /^\s/.test(lower.slice(one.length))));
  if (word !== undefined) {
    marks.push("approximate");
    text = text.slice(word.length).trimStart();
  }
  for (let last = text.at(-1) ?? ""; text.length > 1 && "?*†".includes(last) && last !== ""; last = text.at(-1) ?? "") {
    marks.push(last === "?" ? "doubtful" : "footnote-mark");
    text = text.slice(0, -1).trimEnd();
  }
  return { text, marks };
}

const ORDER = [
  "unit-differs",
  "unit-missing",
  "range",
  "below-limit",
  "above-limit",
  "approximate",
  "doubtful",
  "footnote-mark",
  "number-as-text",
];

/** The one code of several: the first in the stated order. */
export const firstCode = (codes: readonly string[]): string | undefined =>
  ORDER.find((code) => codes.includes(code)) ?? codes[0];
