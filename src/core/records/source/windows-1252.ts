// Where Windows-1252 differs from the first 256 characters of Unicode: the bytes 80 to 9F. 0 = not defined.
const HIGH = [
  0x20ac, 0, 0x201a, 0x0192, 0x201e, 0x2026, 0x2020, 0x2021, 0x02c6, 0x2030, 0x0160, 0x2039, 0x0152, 0, 0x017d, 0, 0,
  0x2018, 0x2019, 0x201c, 0x201d, 0x2022, 0x2013, 0x2014, 0x02dc, 0x2122, 0x0161, 0x203a, 0x0153, 0, 0x017e, 0x0178,
];

/** Text out of Windows-1252 bytes; a byte that it does not define becomes U+FFFD. Source: Unicode Consortium, CP1252.TXT. */
export function windows1252(bytes: Uint8Array): string {
  const parts: string[] = [];
  for (let start = 0; start < bytes.length; start += 8192) {
    const part = Array.from(bytes.subarray(start, start + 8192), (byte) =>
      byte < 0x80 || byte > 0x9f ? byte : HIGH[byte - 0x80] || 0xfffd,
    );
    parts.push(String.fromCharCode(...part));
  }
  return parts.join("");
}
