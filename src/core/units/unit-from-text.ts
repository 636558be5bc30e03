// What a maker writes after a number or in a column head, as a unit.
import type { Unit } from "./unit.ts";
import { unitFromParts } from "./unit.ts";
import { unitRecordOfCode, unitRecordOfSpelling } from "./unit-catalogue.ts";
import { unitParts } from "./unit-parts.ts";

/** Spellings that mean a compound or a power. */
const wholes = new Map<string, string>([
  ["cc", "cm3"],
  ["pcf", "[lb_av]/[ft_i]3"],
  ["pli", "[lbf_av]/[in_i]"],
]);

const SUPERSCRIPTS = new Map([..."⁰¹²³⁴⁵⁶⁷⁸⁹⁻"].map((mark, index) => [mark, "0123456789-"[index] ?? ""]));

/** One spelling for what looks alike: superscripts, the two micro signs, the joining dots, spaces between units. */
function normalized(text: string): string {
  let plain = "";
  for (const mark of text.normalize("NFC").trim()) {
    if (mark === "µ" || mark === "μ") plain += "u";
    else if (mark === "·" || mark === "⋅" || mark === "*" || mark === "×" || mark === "•") plain += ".";
    else if (mark === "⁄" || mark === "∕" || mark === "÷") plain += "/";
    else if (mark === "−") plain += "-";
    else plain += SUPERSCRIPTS.get(mark) ?? mark;
  }
  return plain
    .split(/[\s\u00a0\u202f\u2009]/)
    .filter((word) => word !== "")
    .map((word) => (word === "per" ? "/" : word))
    .join(" ");
}

/**
 * The unit that a text of the trade means, or null. text: at most 60 characters, outer space allowed: "kg/m³", "g/cc", "N m", "lbs/ft3",
 * "inches", a UCUM code. Letters' case matters, except in words of four letters or more. "oz", "lb" and "g" are masses; "'" alone is a minute
 * of arc (a foot is the reader's matter). The result's code is the canonical spelling.
 */
export function unitFromText(text: string): Unit | null {
  if (text.length > TEXT_LENGTH_LIMIT) return null;
  const before = read.get(text);
  if (before !== undefined) return before;
  const unit = unitRead(text);
  if (read.size < KEPT) read.set(text, unit);
  return unit;
}

/** What was read before: a table says "mm" ten thousand times. Only a memory; the answer never depends on it. */
const read = new Map<string, Unit | null>();
const KEPT = 500;
const TEXT_LENGTH_LIMIT = 60;

function unitRead(text: string): Unit | null {
  const plain = normalized(text);
  const alone = unitRecordOfSpelling(plain);
  if (alone) return unitFromParts([{ unit: alone, exponent: [1, 1], below: false }]);
  const joined = plain
    .replaceAll(" / ", "/")
    .replaceAll("/ ", "/")
    .replaceAll(" /", "/")
    .replaceAll(" . ", ".")
    .replaceAll(" ", ".");
  const compound = joined
    .split("/")
    .map((side) => wholes.get(side) ?? side)
    .join("/");
  const parts = unitParts(compound, (name) => unitRecordOfSpelling(name) ?? unitRecordOfCode(name));
  if (!parts || (parts.length === 1 && compound.startsWith("/")) || onlyNumbers(compound)) return null;
  return unitFromParts(parts);
}

/** "1", "1/1" are numbers and no units. */
const onlyNumbers = (compound: string) => /^[\d./()]*$/.test(compound);
