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
  if (at <= 0) return null;
  const unit = importUnit(text.slice(at + 1));
  return unit === null ? null : { name: text.slice(0, at).trim(), unit };
}

function fromSpace(text: string): Heading | null {
  const at = text.lastIndexOf(" ");
  const last = text
    .slice(at + 1)
    .replaceAll("²", "2")
    .replaceAll("³", "3")
    .replaceAll("^", "");
  return at > 0 && !"/,".includes(text[at - 1] ?? " ") && AFTER_SPACE.has(last) ? fromTail(text, at) : null;
}

/** The first slash whose right side is a unit, unless the slash is part of a unit itself ("speed m/s"). */
function fromSlash(text: string): Heading | null {
  for (let at = text.indexOf("/"); at >= 0; at = text.indexOf("/", at + 1)) {
    const word = text.slice(text.lastIndexOf(" ", at) + 1).split(" ")[0] ?? "";
    if (word !== "/" && importUnit(word) !== null) continue;
    const found = fromTail(text, at);
    if (found) return found;
  }
  return null;
}

/** After the last underscore, unless the part before is a unit too ("density_kg_m3" would be cut in half). */
function fromUnderscore(text: string): Heading | null {
  const at = text.lastIndexOf("_");
  const before = text.slice(text.lastIndexOf("_", at - 1) + 1, at);
  return text.lastIndexOf("_", at - 1) >= 0 && importUnit(before) !== null ? null : fromTail(text, at);
}

/** Name and unit of a header: white space joined, the unit taken out of it. */
export function heading(header: string): Heading {
  const text = withoutHidden(header.replaceAll("\0", ""))
    .split(/\s+/u)
    .filter((part) => part !== "")
    .join(" ")
    .normalize("NFC");
  return (
    fromBrackets(text) ??
    fromTail(text, text.lastIndexOf(",")) ??
    fromSpace(text) ??
    fromSlash(text) ??
    fromUnderscore(text) ?? { name: text, unit: null }
  );
}
