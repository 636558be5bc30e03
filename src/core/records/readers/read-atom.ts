// Scans one number at a place of a text: sign, digits in groups, exponent, or a fraction in any of its spellings.
import type { Atom } from "./atom.ts";
import { voteOf } from "./atom.ts";

const VULGAR: Readonly<Record<string, readonly [number, number]>> = {
  "½": [1, 2],
  "¼": [1, 4],
  "¾": [3, 4],
  "⅛": [1, 8],
  "⅜": [3, 8],
  "⅝": [5, 8],
  "⅞": [7, 8],
  "⅓": [1, 3],
  "⅔": [2, 3],
  "⅕": [1, 5],
  "⅖": [2, 5],
  "⅗": [3, 5],
  "⅘": [4, 5],
  "⅙": [1, 6],
  "⅚": [5, 6],
  "⅐": [1, 7],
  "⅑": [1, 9],
  "⅒": [1, 10],
};
const DENOMINATORS = new Set([2, 4, 8, 16, 32, 64, 128]);
const SUPERSCRIPT = "⁰¹²³⁴⁵⁶⁷⁸⁹";
const SUBSCRIPT = "₀₁₂₃₄₅₆₇₈₉";
const SPACES = " \u00a0\u2009\u202f\u2007\u2008";

/** Digits of other scripts and full-width signs as plain ones; U+066B and U+066C keep their own meaning. */
export function withPlainDigits(text: string): string {
  if (!/[^\x20-\x7e]/.test(text)) return text;
  return text.replace(/[\uff10-\uff19\u0660-\u0669\u06f0-\u06f9\uff0b\uff0d\u2212]/g, (char) => {
    const code = char.charCodeAt(0);
    if (code === 0xff0b) return "+";
    if (code === 0xff0d || code === 0x2212) return "-";
    return String(code >= 0xff10 ? code - 0xff10 : code >= 0x06f0 ? code - 0x06f0 : code - 0x0660);
  });
}

const digitAt = (text: string, at: number) => {
  const code = text.charCodeAt(at);
  return code >= 48 && code <= 57;
};
function digitsFrom(text: string, at: number): number {
  let end = at;
  while (digitAt(text, end)) end++;
  return end;
}
function scriptDigits(text: string, at: number, alphabet: string): { value: string; end: number } {
  let value = "";
  let end = at;
  for (let digit = alphabet.indexOf(text[end] ?? "-"); digit >= 0; digit = alphabet.indexOf(text[end] ?? "-")) {
    value += String(digit);
    end++;
  }
  return { value, end };
}

type Found = { readonly atom: Atom; readonly end: number; readonly unitless: boolean };

function fractionAtom(sign: number, whole: number, top: number, bottom: number): Atom {
  return {
    shape: "fraction",
    value: sign * (whole + (bottom === 0 ? 0 : top / bottom)),
    allowed: DENOMINATORS.has(bottom),
  };
}

/** "3/32", "3⁄32", "⁷⁄₁₆", "⅜" at a place. */
function bareFraction(text: string, at: number): { top: number; bottom: number; end: number } | null {
  const vulgar = VULGAR[text[at] ?? ""];
  if (vulgar) return { top: vulgar[0], bottom: vulgar[1], end: at + 1 };
  const above = scriptDigits(text, at, SUPERSCRIPT);
  if (above.value !== "" && text[above.end] === "⁄") {
    const below = scriptDigits(text, above.end + 1, SUBSCRIPT);
    return below.value === "" ? null : { top: Number(above.value), bottom: Number(below.value), end: below.end };
  }
  const slash = digitsFrom(text, at);
  if (slash === at || (text[slash] !== "/" && text[slash] !== "⁄")) return null;
  const end = digitsFrom(text, slash + 1);
  return end === slash + 1
    ? null
    : { top: Number(text.slice(at, slash)), bottom: Number(text.slice(slash + 1, end)), end };
}

/** The numeral's characters: digits, points and commas; groups by space or apostrophe taken out. */
function numeralBody(text: string, from: number): { body: string; end: number; grouped: boolean; arabic: boolean } {
  let at = from;
  let body = "";
  let grouped = false;
  let arabic = false;
  let sinceBreak = 0;
  for (;;) {
    const char = text[at] ?? "";
    if (digitAt(text, at)) {
      body += char;
      sinceBreak++;
      at++;
    } else if (
      (char === "." || char === ",") &&
      (digitAt(text, at + 1) || (body !== "" && !/[.,]$/.test(body) && !digitAt(text, at + 1)))
    ) {
      body += char;
      at++;
    } else if (char === "٫" && digitAt(text, at + 1) && !arabic) {
      body += ".";
      arabic = true;
      at++;
    } else if (
      char !== "" &&
      (SPACES.includes(char) || "'’٬".includes(char)) &&
      !/[.,]/.test(body) &&
      sinceBreak >= 1 &&
      sinceBreak <= 3 &&
      digitsFrom(text, at + 1) === at + 4 &&
      text[at + 4] !== "/" &&
      text[at + 4] !== "⁄"
    ) {
      grouped = true;
      sinceBreak = 0;
      at++;
    } else return { body, end: at, grouped, arabic };
  }
}

/** "e-3", "×10^-3", "·10⁻³" at a place. */
function exponentFrom(text: string, at: number): { exponent: number; end: number } {
  const plain = /^[eE]([+-]?)(\d{1,4})(?!\d)/.exec(text.slice(at, at + 8));
  if (plain) return { exponent: Number(`${plain[1]}${plain[2]}`), end: at + plain[0].length };
  const times = /^ ?[×·x*⋅] ?10/.exec(text.slice(at, at + 6));
  if (!times) return { exponent: 0, end: at };
  let from = at + times[0].length;
  if (text[from] === "^") {
    const power = /^\^([+-]?)(\d{1,4})(?!\d)/.exec(text.slice(from, from + 8));
    return power
      ? { exponent: Number(`${power[1]}${power[2]}`), end: from + power[0].length }
      : { exponent: 0, end: at };
  }
  const minus = text[from] === "⁻";
  if (minus || text[from] === "⁺") from++;
  const { value, end } = scriptDigits(text, from, SUPERSCRIPT);
  return value === "" || value.length > 4
    ? { exponent: 0, end: at }
    : { exponent: minus ? -Number(value) : Number(value), end };
}

/** The number at a place of the text, null if none stands there. */
export function readAtom(text: string, from: number): Found | null {
  const signed = "+-–".includes(text[from] ?? "~");
  const sign = signed && text[from] !== "+" ? -1 : 1;
  const at = signed ? from + 1 : from;
  const fraction = bareFraction(text, at);
  if (fraction)
    return { atom: fractionAtom(sign, 0, fraction.top, fraction.bottom), end: fraction.end, unitless: true };
  if (!digitAt(text, at) && !((text[at] === "." || text[at] === "," || text[at] === "٫") && digitAt(text, at + 1)))
    return null;
  const { body, end, grouped, arabic } = numeralBody(text, at);
  if (/^\d+$/.test(body) && !grouped) {
    const gap = text[end] === "-" || text[end] === "–" || SPACES.includes(text[end] ?? "~") ? 1 : 0;
    const part = bareFraction(text, end + gap);
    const glued =
      part !== null && gap === 0 && (VULGAR[text[end] ?? ""] !== undefined || SUPERSCRIPT.includes(text[end] ?? "~"));
    if (part && (glued || gap === 1))
      return { atom: fractionAtom(sign, Number(body), part.top, part.bottom), end: part.end, unitless: true };
  }
  const vote = arabic ? "certain" : voteOf(body, grouped);
  if (vote === null) return null;
  const power = exponentFrom(text, end);
  return { atom: { shape: "numeral", sign, body, exponent: power.exponent, vote }, end: power.end, unitless: false };
}
