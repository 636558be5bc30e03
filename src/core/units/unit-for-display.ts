// A unit's code as shown to people and as read aloud.
import { Defect } from "../base/index.ts";
import type { Rational } from "./dimension.ts";
import { unitRecordOfCode } from "./unit-catalogue.ts";
import type { UnitPart } from "./unit-parts.ts";
import { unitParts } from "./unit-parts.ts";

const HIGH = "⁰¹²³⁴⁵⁶⁷⁸⁹";

function partsOf(code: string): readonly UnitPart[] {
  const parts = unitParts(code, unitRecordOfCode);
  if (!parts) throw new Defect(`no unit has the code ${code}`);
  return parts;
}

const exponentShown = ([n, d]: Rational): string => {
  if (d !== 1) return `^(${n}/${d})`;
  return n === 1 ? "" : (n < 0 ? "⁻" : "") + (HIGH[Math.abs(n)] ?? "");
};

const shown = (parts: readonly UnitPart[]): string =>
  parts
    .map((part, index) => {
      const mark = part.below ? "/" : index === 0 ? "" : "·";
      if ("bracket" in part) return `${mark}(${shown(part.bracket)})`;
      if (part.unit.code === "1") return index === 0 ? "1" : "";
      return (index === 0 && part.below ? "1" : "") + mark + part.unit.shown + exponentShown(part.exponent);
    })
    .join("");

/** For people: "kg/m³", "in", "°C", "N·m"; nothing where there is no unit. code: a canonical code. */
export const unitForDisplay = (code: string): string => (code === "1" ? "" : shown(partsOf(code)));

const POWERS = new Map([
  [2, "square"],
  [3, "cubic"],
]);

function aloud(part: UnitPart & { readonly unit: unknown }, several: boolean): string {
  if (!("unit" in part) || "bracket" in part) return "";
  const name = part.unit.words[several ? 1 : 0];
  const [n, d] = part.exponent;
  if (d !== 1) return `${name} to the power ${n}/${d}`;
  if (n === 1) return name;
  const word = POWERS.get(n);
  if (word && part.unit.dimension.length) return `${word} ${name}`;
  return n === 2 ? `${name} squared` : `${name} to the power ${n < 0 ? "minus " : ""}${Math.abs(n)}`;
}

/** Only the last unit above the line takes the plural: "newton metres per second". */
function spoken(parts: readonly UnitPart[], plural: boolean): string {
  const lastAbove = parts.reduce((last, part, index) => (part.below ? last : index), -1);
  return parts
    .map((part, index) => {
      const word =
        "bracket" in part
          ? spoken(part.bracket, plural && index === lastAbove)
          : aloud(part, plural && index === lastAbove);
      return part.below ? `per ${word}` : word;
    })
    .filter((word) => word !== "")
    .join(" ");
}

/** For a screen reader: "kilograms per cubic metre", "newton metres"; nothing where there is no unit. code: a canonical code. */
export const unitInWords = (code: string): string => (code === "1" ? "" : spoken(partsOf(code), true));
