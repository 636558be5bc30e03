/** Bytes that the sequence at `at` takes in UTF-8, and characters (of UTF-16) it decodes to; bytes that are no UTF-8 give one each, as in decoding. */
function sequenceAt(bytes: Uint8Array, at: number): { bytes: number; characters: number } {
  const lead = bytes[at] ?? 0;
  if (lead < 0x80) return { bytes: 1, characters: 1 };
  const more =
    lead >= 0xc2 && lead <= 0xdf ? 1 : lead >= 0xe0 && lead <= 0xef ? 2 : lead >= 0xf0 && lead <= 0xf4 ? 3 : 0;
  // The second byte is bounded so that nothing is written longer than it need be, no half of a pair, nothing past U+10FFFF.
  let low = lead === 0xe0 ? 0xa0 : lead === 0xf0 ? 0x90 : 0x80;
  let high = lead === 0xed ? 0x9f : lead === 0xf4 ? 0x8f : 0xbf;
  for (let taken = 1; taken <= more; taken++) {
    const next = bytes[at + taken];
    if (next === undefined || next < low || next > high) return { bytes: taken, characters: 1 };
    [low, high] = [0x80, 0xbf];
  }
  return { bytes: more + 1, characters: more === 3 ? 2 : 1 };
}

/**
 * Where characters of a decoded text stand in its bytes. `encoding`: "utf-8", "utf-16le", "utf-16be" or "windows-1252"; `skipped`: bytes of
 * its mark, before the text; `offsets`: in characters, rising. Source: WHATWG Encoding, UTF-8 decoder.
 */
export function byteOffsets(
  bytes: Uint8Array,
  encoding: string,
  skipped: number,
  offsets: readonly number[],
): readonly number[] {
  if (encoding === "windows-1252") return offsets.map((offset) => skipped + offset);
  if (encoding !== "utf-8") return offsets.map((offset) => Math.min(bytes.length, skipped + 2 * offset));
  let [at, character] = [skipped, 0];
  return offsets.map((offset) => {
    while (character < offset && at < bytes.length) {
      const sequence = sequenceAt(bytes, at);
      at += sequence.bytes;
      character += sequence.characters;
    }
    return at;
  });
}
