// A compound unit taken apart: "m4/(kg.s)" is m to the 4, kg to the -1, s to the -1, each with its place above or below the line.
import type { Rational } from "./dimension.ts";
import { rational } from "./dimension.ts";
import type { UnitRecord } from "./unit-record.ts";

/** One factor of a compound unit: a unit with an exponent, or a bracket of factors. */
export type UnitPart =
  | { readonly unit: UnitRecord; readonly exponent: Rational; readonly below: boolean }
  | { readonly bracket: readonly UnitPart[]; readonly below: boolean };

/** Longest code in characters, and deepest brackets. */
const CODE_LENGTH_LIMIT = 240;
const DEPTH_LIMIT = 8;

/**
 * The parts of a compound unit, or null if any of it is not a unit.
 * text: units joined by `.` and `/`, brackets ( ), exponents behind a unit with or without `^`, `^(1/2)` for a broken one; no spaces.
 * find: which unit a name means. A slash puts only the next factor below the line, as UCUM has it (left to right).
 * Source: UCUM specification, section 2 (syntax).
 */
export function unitParts(text: string, find: (name: string) => UnitRecord | undefined): readonly UnitPart[] | null {
  if (text.length === 0 || text.length > CODE_LENGTH_LIMIT) return null;
  let at = 0;

  function product(depth: number): UnitPart[] | null {
    const parts: UnitPart[] = [];
    let below = text[at] === "/" && depth === 0;
    if (below) at += 1;
    for (;;) {
      const part = factor(below, depth);
      if (!part) return null;
      parts.push(part);
      const mark = text[at];
      if (mark !== "." && mark !== "/") return parts;
      below = mark === "/";
      at += 1;
    }
  }

  function factor(below: boolean, depth: number): UnitPart | null {
    if (text[at] === "(") {
      if (depth === DEPTH_LIMIT) return null;
      at += 1;
      const bracket = product(depth + 1);
      if (!bracket || text[at] !== ")") return null;
      at += 1;
      return { bracket, below };
    }
    let end = at;
    while (end < text.length && !"./()^".includes(text[end] ?? "")) end += 1;
    const word = text.slice(at, end);
    at = end;
    if (text[at] === "^") return powered(word, below);
    const whole = find(word);
    if (whole) return { unit: whole, exponent: [1, 1], below };
    const split = /^(\D*[^\d+-])([+-]?[1-9])$/.exec(word);
    const unit = split?.[1] ? find(split[1]) : undefined;
    return unit ? { unit, exponent: [Number(split?.[2]), 1], below } : null;
  }

  function powered(word: string, below: boolean): UnitPart | null {
    const exponent = /^\^(?:\(([+-]?[1-9])\/([1-9])\)|([+-]?[1-9]))/.exec(text.slice(at, at + 8));
    const unit = find(word);
    if (!exponent || !unit) return null;
    at += exponent[0].length;
    return {
      unit,
      exponent: exponent[3] ? [Number(exponent[3]), 1] : rational(Number(exponent[1]), Number(exponent[2])),
      below,
    };
  }

  const parts = product(0);
  return parts && at === text.length ? parts : null;
}

/** The canonical code of parts: "[lb_av]/[ft_i]3", "m4/(kg.s)". */
export const codeOfParts = (parts: readonly UnitPart[]): string =>
  parts
    .map((part, index) => {
      const mark = part.below ? (index === 0 ? "1/" : "/") : index === 0 ? "" : ".";
      if ("bracket" in part) return `${mark}(${codeOfParts(part.bracket)})`;
      const [n, d] = part.exponent;
      return mark + part.unit.code + (d !== 1 ? `^(${n}/${d})` : n === 1 ? "" : String(n));
    })
    .join("");
