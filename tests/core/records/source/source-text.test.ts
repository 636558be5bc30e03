import { expect, it } from "vitest";
import { sourceText } from "../../../../src/core/records/source/source-text.ts";

const utf16 = (text: string, big = false) =>
  new Uint8Array(
    [...text].flatMap((char) => {
      const code = char.charCodeAt(0);
      return big ? [code >> 8, code & 255] : [code & 255, code >> 8];
    }),
  );

it("lets a byte-order mark decide, and drops it", () => {
  expect(sourceText(new Uint8Array([0xef, 0xbb, 0xbf, 0x61]))).toEqual({
    text: "a",
    encoding: "utf-8",
    guessed: false,
  });
  expect(sourceText(new Uint8Array([0xff, 0xfe, ...utf16("aé")])).text).toBe("aé");
  expect(sourceText(new Uint8Array([0xfe, 0xff, ...utf16("aé", true)])).text).toBe("aé");
});
it("knows UTF-16 without a mark by its NULs, as a guess", () => {
  expect(sourceText(utf16("board,mass\n"))).toEqual({ text: "board,mass\n", encoding: "utf-16le", guessed: true });
  expect(sourceText(utf16("board,mass\n", true))).toEqual({
    text: "board,mass\n",
    encoding: "utf-16be",
    guessed: true,
  });
});
// Expected values: Unicode Consortium, MAPPINGS/VENDORS/MICSFT/WINDOWS/CP1252.TXT.
it("falls back to Windows-1252, with U+FFFD for what it does not define", () =>
  expect(sourceText(new Uint8Array([0x80, 0x96, 0xb1, 0xfc, 0x81, 0x9f]))).toEqual({
    text: "€–±ü\ufffdŸ",
    encoding: "windows-1252",
    guessed: true,
  }));
it("uses the encoding it was told, and asks nothing", () =>
  expect(sourceText(new Uint8Array([0xc3, 0xa9]), "windows-1252")).toEqual({
    text: "Ã©",
    encoding: "windows-1252",
    guessed: false,
  }));
