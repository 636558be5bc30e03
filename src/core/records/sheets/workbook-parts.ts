// The parts of a workbook, unpacked one by one as they are asked for. What is unpacked is counted, whatever the headers say.
import { limits } from "../../base/index.ts";
import { checksum } from "./checksum.ts";
import type { WorkbookTrouble } from "./workbook-trouble.ts";
import { type ZipPart, zipParts } from "./zip-parts.ts";

export type WorkbookParts = {
  readonly has: (name: string) => boolean;
  /** The text of a part; a part that is not there is a broken workbook. */
  readonly text: (name: string) => Promise<{ readonly text: string } | WorkbookTrouble>;
};

/** The pieces of a part as they are unpacked; trouble `over` as soon as there are more than `most` bytes. */
async function unpacked({ packed, deflated, checksum: stated }: ZipPart, most: number, over: WorkbookTrouble) {
  if (!deflated) return packed.length > most ? over : wholeOf([packed], stated);
  const stream = new DecompressionStream("deflate-raw");
  const writer = stream.writable.getWriter();
  const reader = stream.readable.getReader();
  // What goes wrong while writing is met again while reading.
  writer.write(packed).catch(() => undefined);
  writer.close().catch(() => undefined);
  const pieces: Uint8Array[] = [];
  let length = 0;
  try {
    for (let piece = await reader.read(); piece.value; piece = await reader.read()) {
      pieces.push(piece.value);
      length += piece.value.length;
      if (length > most) {
        await reader.cancel();
        return over;
      }
    }
  } catch {
    return "broken-workbook";
  }
  return wholeOf(pieces, stated);
}

function wholeOf(pieces: readonly Uint8Array[], stated: number): readonly Uint8Array[] | WorkbookTrouble {
  const found = pieces.reduce((before, piece) => checksum(piece, before), 0);
  return found === stated ? pieces : "broken-workbook";
}

/** Bytes as text: UTF-8, or UTF-16 with its mark, as XML has it. */
function textOf(pieces: readonly Uint8Array[]): string {
  const [one = 0, two = 0] = pieces[0] ?? [];
  const mark = one * 256 + two;
  const decoder = new TextDecoder(mark === 0xfffe ? "utf-16le" : mark === 0xfeff ? "utf-16be" : "utf-8");
  return `${pieces.map((piece) => decoder.decode(piece, { stream: true })).join("")}${decoder.decode()}`;
}

/** The parts of a workbook's bytes. */
export function workbookParts(bytes: Uint8Array): WorkbookParts | WorkbookTrouble {
  if (bytes.length > limits.tableBytes.value) return "file-too-large";
  const parts = zipParts(bytes);
  if (typeof parts === "string") return parts;
  let left: number = limits.unpackedBytes.value;
  return {
    has: (name) => parts.has(name),
    text: async (name) => {
      const part = parts.get(name);
      if (!part) return "broken-workbook";
      const pieces = await (left < limits.partBytes.value
        ? unpacked(part, left, "workbook-too-large")
        : unpacked(part, limits.partBytes.value, "part-too-large"));
      if (typeof pieces === "string") return pieces;
      left -= pieces.reduce((sum, piece) => sum + piece.length, 0);
      return { text: textOf(pieces) };
    },
  };
}
