const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let value = byte;
  for (let bit = 0; bit < 8; bit++) value = value & 1 ? 0xedb88320 ^ (value >>> 1) : value >>> 1;
  return value;
});

/** CRC-32 of bytes, going on from the checksum of those before. Source: ISO/IEC/IEEE 8802-3, 3.2.9, as zip uses it. */
export function checksum(bytes: Uint8Array, before = 0): number {
  let value = ~before;
  for (let at = 0; at < bytes.length; at++) value = (TABLE[(value ^ (bytes[at] ?? 0)) & 0xff] ?? 0) ^ (value >>> 8);
  return ~value >>> 0;
}
