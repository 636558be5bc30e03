// A field ready for reading: cleaned text beside the raw one, and what was odd about it.
import type { Reading } from "../reading.ts";

export type Field = {
  readonly raw: string;
  /** Trimmed, without NUL, zero-width and bidi control characters, NFC, newlines as \n. */
  readonly text: string;
  readonly quoteCode?: "stray-quote" | "unclosed-quote";
  readonly hidden: boolean;
  readonly nul: boolean;
  readonly bad: boolean;
};

const HIDDEN = /[\u061c\u180e\u200b-\u200f\u202a-\u202e\u2060-\u2064\u2066-\u2069\ufeff]/u;
const PLAIN = /^[\x21-\x7e](?:[\x20-\x7e]*[\x21-\x7e])?$/;
const isPictograph = (char: string | undefined) =>
  char !== undefined &&
  (/\p{Extended_Pictographic}/u.test(char) || char === "\ufe0f" || /\p{Emoji_Modifier}/u.test(char));

/** Without zero-width and bidi control characters; the joiner between two pictographs stays. */
export function withoutHidden(text: string): string {
  if (!HIDDEN.test(text)) return text;
  const chars = [...text];
  return chars
    .filter(
      (char, at) =>
        !HIDDEN.test(char) || (char === "\u200d" && isPictograph(chars[at - 1]) && isPictograph(chars[at + 1])),
    )
    .join("");
}

/** The field of a raw text. */
export function field(raw: string, quoteCode?: "stray-quote" | "unclosed-quote"): Field {
  const code = quoteCode ? { quoteCode } : {};
  if (PLAIN.test(raw) || raw === "") return { raw, text: raw, ...code, hidden: false, nul: false, bad: false };
  const nul = raw.includes("\0");
  const trimmed = (nul ? raw.replaceAll("\0", "") : raw).trim();
  const seen = withoutHidden(trimmed);
  const text = seen.replaceAll("\r\n", "\n").replaceAll("\r", "\n").trim().normalize("NFC");
  return { raw, text, ...code, hidden: seen !== trimmed, nul, bad: raw.includes("\ufffd") };
}

/** Field codes that stand before what the reader says, and those that only stand where it says nothing. */
const leadingCode = (from: Field): string | undefined =>
  from.bad ? "bad-character" : (from.quoteCode ?? (from.nul ? "nul-removed" : undefined));

const FIRST = new Set(["sheet-error", "ditto", "formula-without-value", "formula-like"]);

/** The reading of a field with its one code: the field's own trouble and the reader's, the graver one first. */
export function reading(
  from: Field,
  kind: Reading["kind"],
  value: Reading["value"],
  unit: string | null = null,
  code?: string,
  uncertainty?: number,
): Reading {
  const lead = kind === "blank" ? undefined : leadingCode(from);
  const unread = from.bad && kind !== "text" && kind !== "blank";
  const own =
    code !== undefined && FIRST.has(code)
      ? code
      : (lead ?? code ?? (from.hidden && kind !== "blank" ? "hidden-characters" : undefined));
  return {
    raw: from.raw,
    kind: unread ? "unreadable" : kind,
    value: unread ? null : value,
    unit: unread || kind === "unreadable" ? null : unit,
    ...(uncertainty === undefined || unread ? {} : { uncertainty }),
    ...(own === undefined ? {} : { code: own }),
  };
}

/** A field that cannot be read, and why. */
export const unreadable = (from: Field, code: string): Reading => reading(from, "unreadable", null, null, code);
/** A field kept as text. */
export const asText = (from: Field, code?: string): Reading => reading(from, "text", from.text, null, code);
