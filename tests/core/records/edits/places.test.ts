// Where things stand: fields in a text, characters in its bytes.
import fc from "fast-check";
import { expect, it } from "vitest";
import { byteOffsets } from "../../../../src/core/records/edits/byte-offsets.ts";
import { crc32 } from "../../../../src/core/records/edits/crc32.ts";
import { encodedText } from "../../../../src/core/records/edits/encoded-text.ts";
import { fieldSpans, recordSpans } from "../../../../src/core/records/edits/record-spans.ts";
import { fieldsOf } from "../../../../src/core/records/source/raw-records.ts";
import { sourceText } from "../../../../src/core/records/source/source-text.ts";
import { splitRecords } from "../../../../src/core/records/source/split-records.ts";
import { law } from "../../../support/law.ts";

const untidy = fc.string({ unit: fc.constantFrom(...'ab ";,\n\r'), maxLength: 30 });
law(
  "spans are the records and fields that reading splits",
  [untidy, fc.constantFrom(",", ";", " ", null)],
  (text, delimiter) => {
    const split = splitRecords(text, delimiter);
    const spans = recordSpans(text, delimiter, 0);
    expect(spans.starts.map((_, record) => fieldSpans(spans, record).map(({ raw }) => raw))).toEqual(
      Array.from({ length: split.count }, (_, record) => fieldsOf(split, record)),
    );
  },
  2000,
);

const byte = fc.oneof(
  fc.integer({ min: 0, max: 255 }),
  fc.constantFrom(0xe2, 0x82, 0xac, 0xf0, 0x9f, 0x98, 0x80, 0xed, 0xa0, 0xc3, 0x41),
);
law(
  "a character of UTF-8 stands where the decoder took it from, whatever the bytes",
  [fc.array(byte, { maxLength: 20 })],
  (given) => {
    const bytes = Uint8Array.from(given);
    const decode = (some: Uint8Array) => new TextDecoder("utf-8", { ignoreBOM: true }).decode(some);
    const text = decode(bytes);
    for (let offset = 0; offset <= text.length; offset++) {
      if (/[\udc00-\udfff]/.test(text[offset] ?? "")) continue;
      const [at = -1] = byteOffsets(bytes, "utf-8", 0, [offset]);
      expect(decode(bytes.subarray(0, at)) + decode(bytes.subarray(at))).toBe(text);
      expect(decode(bytes.subarray(0, at))).toHaveLength(offset);
    }
  },
  2000,
);

it.each(["utf-16le", "utf-16be", "windows-1252"])("writes what it reads in %s", (encoding) => {
  const text = "a,ö€”\r\n";
  const bytes = encodedText(text, encoding);
  expect(bytes instanceof Uint8Array && sourceText(bytes, encoding).text).toBe(text);
  expect(byteOffsets(new Uint8Array(20), encoding, 2, [0, 3])).toEqual(encoding === "windows-1252" ? [2, 5] : [2, 8]);
});

it("computes the check value of the standard", () => {
  expect(crc32(new TextEncoder().encode("123456789"))).toBe("cbf43926");
});
