// Bytes to text: a byte-order mark decides, else the pattern of NULs, else valid UTF-8, else Windows-1252.
import { windows1252 } from "./windows-1252.ts";

/** The text of a file, which encoding it was taken for, and whether that was a guess. */
export type SourceText = { readonly text: string; readonly encoding: string; readonly guessed: boolean };

const MARKS: readonly (readonly [encoding: string, bytes: readonly number[]])[] = [
  ["utf-8", [0xef, 0xbb, 0xbf]],
  ["utf-16le", [0xff, 0xfe]],
  ["utf-16be", [0xfe, 0xff]],
];
const NAMES = new Map([
  ["utf8", "utf-8"],
  ["utf-8", "utf-8"],
  ["utf16", "utf-16le"],
  ["utf-16", "utf-16le"],
  ["utf16le", "utf-16le"],
  ["utf-16le", "utf-16le"],
  ["utf16be", "utf-16be"],
  ["utf-16be", "utf-16be"],
  ["cp1252", "windows-1252"],
  ["windows-1252", "windows-1252"],
  ["latin1", "windows-1252"],
  ["iso-8859-1", "windows-1252"],
]);

const decoded = (bytes: Uint8Array, encoding: string): string =>
  encoding === "windows-1252" ? windows1252(bytes) : new TextDecoder(encoding, { ignoreBOM: true }).decode(bytes);

function validUtf8(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return null;
  }
}

/** UTF-16 shows itself by NULs in one half of the byte places and hardly any in the other. */
function encodingByNuls(bytes: Uint8Array): string | null {
  const length = Math.min(bytes.length, 4096);
  let even = 0;
  let odd = 0;
  for (let at = 0; at < length; at++) if (bytes[at] === 0) at % 2 ? odd++ : even++;
  const evens = Math.ceil(length / 2);
  const odds = Math.floor(length / 2);
  if (odds === 0) return null;
  if (odd >= 0.3 * odds && even < 0.05 * evens) return "utf-16le";
  return even >= 0.3 * evens && odd < 0.05 * odds ? "utf-16be" : null;
}

/** The text of the bytes. A given encoding is used as it is (a matching mark is dropped); an unknown name counts as none given. */
export function sourceText(bytes: Uint8Array, encoding?: string): SourceText {
  const mark = MARKS.find(([, head]) => head.every((byte, at) => bytes[at] === byte));
  const asked = encoding === undefined ? undefined : NAMES.get(encoding.toLowerCase());
  if (asked)
    return {
      text: decoded(mark?.[0] === asked ? bytes.subarray(mark[1].length) : bytes, asked),
      encoding: asked,
      guessed: false,
    };
  if (mark) return { text: decoded(bytes.subarray(mark[1].length), mark[0]), encoding: mark[0], guessed: false };
  const wide = encodingByNuls(bytes);
  if (wide) return { text: decoded(bytes, wide), encoding: wide, guessed: true };
  const plain = validUtf8(bytes);
  return plain === null
    ? { text: windows1252(bytes), encoding: "windows-1252", guessed: true }
    : { text: plain, encoding: "utf-8", guessed: false };
}
