// Where the digest of a copy stands, and over what it is taken: every byte of the file, with the digest's own 64 digits as zeros.

/** SHA-256 of bytes as 64 hexadecimal digits in lower case; given by server, cli and page. */
export type Digest = (bytes: Uint8Array) => Promise<string>;

export const DIGEST_MARK = '<meta name="thumbrule-digest" content="sha256-';
export const BLANK_DIGEST = "0".repeat(64);
const HEX = /^[0-9a-f]{64}$/;
const HEAD = 65_536;

const indexOfBytes = (bytes: Uint8Array, wanted: Uint8Array, before: number): number => {
  const last = Math.min(before, bytes.length) - wanted.length;
  for (let at = 0; at <= last; at++) {
    let same = 0;
    while (same < wanted.length && bytes[at + same] === wanted[same]) same++;
    if (same === wanted.length) return at;
  }
  return -1;
};

/** The stated digest, and the bytes with it blanked; null where the file has no place for one in its head. */
export function copyDigest(bytes: Uint8Array): { readonly stated: string; readonly blanked: Uint8Array } | null {
  const mark = new TextEncoder().encode(DIGEST_MARK);
  const found = indexOfBytes(bytes, mark, HEAD);
  if (found < 0) return null;
  const from = found + mark.length;
  const stated = Array.from(bytes.subarray(from, from + 64), (byte) => String.fromCharCode(byte)).join("");
  if (!HEX.test(stated)) return null;
  // A copy in every case: the `slice` of a Node buffer would share its memory with the file.
  const blanked = Uint8Array.from(bytes);
  blanked.fill(0x30, from, from + 64);
  return { stated, blanked };
}

/** base64 of a digest in hexadecimal digits, as a content security policy wants it. */
export const base64FromHex = (hex: string): string =>
  btoa((hex.match(/../g) ?? []).map((pair) => String.fromCharCode(Number.parseInt(pair, 16))).join(""));
