// A header's name and the unit in it.
import { withoutHidden } from "./field.ts";
import { importUnit } from "./import-unit.ts";

export type Heading = { readonly name: string; readonly unit: string | null };

const AFTER_SPACE = new Set(["mm", "cm", "kg", "Hz", "kHz", "GPa", "MPa", "psi", "thou", "kg/m3", "g/cm3"]);
const CLOSING = new Map([
  ["(", ")"],
  ["[", "]"],
]);

/** The unit between brackets, also with brackets of its own: "(mm)", "[[in_i]]", "[in_i]". */
function unitInBrackets(text: string): string | null {
  const inner = text.slice(1, -1);
  return importUnit(inner) ?? (text.startsWith("[") ? importUnit(text) : null);
}

/** Outermost bracket groups from the last to the first; nested ones belong to the outer one. */
function bracketGroups(text: string): { start: number; end: number }[] {
  const groups: { start: number; end: number }[] = [];
  let depth = 0;
  let start = 0;
  const closing: string[] = [];
  for (let at = 0; at < text.length; at++) {
    const char = text[at] ?? "";
    const close = CLOSING.get(char);
    if (close !== undefined) {
      if (depth++ === 0) start = at;
      closing.push(close);
    } else if (depth > 0 && char === closing.at(-1)) {
      closing.pop();
      if (--depth === 0) groups.push({ start, end: at + 1 });
    }
  }
  return groups.reverse();
}

function fromBrackets(text: string): Heading | null {
  for (const { start, end } of bracketGroups(text)) {
    const unit = unitInBrackets(text.slice(start, end));
    if (unit !== null) return { name: `${text.slice(0, start).trimEnd()} ${text.slice(end).trimStart()}`.trim(), unit };
  }
  return null;
}

function fromTail(text: string, at: number): Heading | null {
  const unit = importUnit(text.slice(at + 1));
  return unit === null ? null : { name: text.slice(0, at).trim(), unit };
}

const withTightSlashes = (text: string) => text.replace(/ ?\/ ?/g, "/");

/** After the last space, for the units that no word is mistaken for. */
function fromSpace(text: string): Heading | null {
  const tight = withTightSlashes(text);
  const at = tight.lastIndexOf(" ");
  const last = tight
    .slice(at + 1)
    .replaceAll("²", "2")
    .replaceAll("³", "3")
    .replaceAll("^", "");
  return at > 0 && tight[at - 1] !== "," && AFTER_SPACE.has(last) ? fromTail(tight, at) : null;
}

/** Longer than any unit with the space before it. */
const LONGEST_TAIL = 26;

/** Whether the slash or underscore at a place stands inside a unit of two: "speed m/s", "density_kg_m3", "torque_N_m". */
function isInUnit(text: string, at: number): boolean {
  const before = text.slice(Math.max(0, at - LONGEST_TAIL), at).trimEnd();
  const above = before.slice(Math.max(before.lastIndexOf(" "), before.lastIndexOf("_")) + 1);
  const [below = ""] = text
    .slice(at + 1, at + LONGEST_TAIL)
    .trimStart()
    .split(" ");
  return importUnit(`${above}/${below}`) !== null || (text[at] === "_" && importUnit(`${above}.${below}`) !== null);
}

/** After a comma, slash or underscore: the first of them with a unit, and nothing else, on its right. */
function fromSeparator(text: string): Heading | null {
  for (let at = Math.max(1, text.length - LONGEST_TAIL); at < text.length; at++) {
    const char = text[at];
    if (char !== "," && char !== "/" && char !== "_") continue;
    const found = char !== "," && isInUnit(text, at) ? null : fromTail(text, at);
    if (found) return found;
  }
  return null;
}

/** Name and unit of a header: white space joined, the unit taken out of it. */
export function heading(header: string): Heading {
  const text = withoutHidden(header.replaceAll("\0", ""))
    .split(/\s+/u)
    .filter((part) => part !== "")
    .join(" ")
    .normalize("NFC");
  return fromSeparator(text) ?? fromBrackets(text) ?? fromSpace(text) ?? { name: text, unit: null };
}
