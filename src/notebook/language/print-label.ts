// A label of the records in a sentence: as it is, or in quotes where a word of the sentence stands in it.
import { quotedText } from "./quoted-text.ts";

const WORDS = /(?:^|\s)(?:by|where|of|within|stated|because|in|has|when|than|for)(?:\s|$)/;

export const printLabel = (label: string): string =>
  /^[\p{L}_][\p{L}\p{N}_ -]{0,60}$/u.test(label) && !WORDS.test(label) && !label.endsWith(" ") && !label.includes("  ")
    ? label
    : quotedText(label);
