import { expect, test } from "vitest";
import { fileBehind } from "../../../../src/core/records/edits/file-behind.ts";

const bytes = (text: string) => new TextEncoder().encode(text);

test("what lies behind edits is used again for the same bytes read the same way, and for no others", () => {
  const [file, options] = [bytes("123456789"), {}];
  const first = fileBehind(file, options);
  // CRC-32 of these nine digits: ISO/IEC 8802-3's check value.
  expect(first.mark()).toBe("9-cbf43926");
  expect(fileBehind(file, options, first)).toBe(first);
  expect(fileBehind(file, { delimiter: ";" }, first)).not.toBe(first);
  expect(fileBehind(bytes("12345678"), options, first).mark()).toMatch(/^8-/);
});

test("a file is split by its own options, not by those of the last reading", () => {
  const file = bytes("a;b,c\n1;2,3\n");
  const first = fileBehind(file, { delimiter: ";" });
  expect(first.source()?.delimiter).toBe(";");
  expect(fileBehind(file, { delimiter: "," }, first).source()?.delimiter).toBe(",");
});
