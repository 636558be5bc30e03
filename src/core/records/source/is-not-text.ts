// What is no table: pictures, documents, packed files, and anything with too many control characters.
const SIGNATURES: readonly (readonly number[])[] = [
  [0x50, 0x4b, 0x03, 0x04],
  [0x50, 0x4b, 0x05, 0x06], // zip, and with it workbooks
  [0xd0, 0xcf, 0x11, 0xe0], // workbooks of the old kind
  [0x89, 0x50, 0x4e, 0x47],
  [0x25, 0x50, 0x44, 0x46],
  [0xff, 0xd8, 0xff],
  [0x47, 0x49, 0x46, 0x38],
  [0x1f, 0x8b],
];

/** Whether the bytes begin like a known file that is not text. */
export const hasForeignSignature = (bytes: Uint8Array): boolean =>
  SIGNATURES.some((head) => head.every((byte, at) => bytes[at] === byte));

// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is sought
const CONTROL = /[\x00-\x08\x0b\x0c\x0e-\x1f\x7f]/;

/** Whether over 10 % of the characters are control characters other than tab and newline. */
export function isNotText(text: string): boolean {
  if (!CONTROL.test(text)) return false;
  let control = 0;
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if ((code < 32 && code !== 9 && code !== 10 && code !== 13) || code === 127) control++;
  }
  return control > 0.1 * text.length;
}
