const table = Uint32Array.from({ length: 256 }, (_, byte) => {
  let left = byte;
  for (let bit = 0; bit < 8; bit++) left = left & 1 ? (left >>> 1) ^ 0xedb88320 : left >>> 1;
  return left;
});

/**
 * CRC-32 of bytes as eight hexadecimal digits: finds damage, not intent. Source: ISO/IEC 8802-3, 3.2.9 (reflected polynomial EDB88320).
 * @example crc32 of "123456789" is "cbf43926"
 */
export function crc32(bytes: Uint8Array): string {
  let rest = 0xffffffff;
  for (const byte of bytes) rest = (rest >>> 8) ^ (table[(rest ^ byte) & 255] ?? 0);
  return ((rest ^ 0xffffffff) >>> 0).toString(16).padStart(8, "0");
}
