// The directory of a zip file: which parts it has and where they lie. Nothing is unpacked, and no size is believed.
import { limits } from "../../base/index.ts";
import type { WorkbookTrouble } from "./workbook-trouble.ts";

/** `packed`: the bytes as they lie in the file; `deflated`: whether they are packed at all. */
export type ZipPart = {
  readonly name: string;
  readonly packed: Uint8Array;
  readonly deflated: boolean;
  readonly checksum: number;
};

const END = 0x06054b50;
const ENTRY = 0x02014b50;
const LOCAL = 0x04034b50;
const END_LENGTH = 22;
const LONGEST_COMMENT = 0xffff;

/** Place of the end record, which stands last but for a comment; -1 if there is none. */
function endPlace(view: DataView): number {
  const first = Math.max(0, view.byteLength - END_LENGTH - LONGEST_COMMENT);
  for (let at = view.byteLength - END_LENGTH; at >= first; at--) if (view.getUint32(at, true) === END) return at;
  return -1;
}

/** The part whose directory entry stands at a place, and the place of the next one. */
function partAt(bytes: Uint8Array, view: DataView, at: number): { part: ZipPart; next: number } | WorkbookTrouble {
  if (at + 46 > bytes.length || view.getUint32(at, true) !== ENTRY) return "broken-workbook";
  if (view.getUint16(at + 8, true) & 1) return "locked-workbook";
  const method = view.getUint16(at + 10, true);
  const nameLength = view.getUint16(at + 28, true);
  const local = view.getUint32(at + 42, true);
  if (local + 30 > bytes.length || view.getUint32(local, true) !== LOCAL) return "broken-workbook";
  const start = local + 30 + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
  const end = start + view.getUint32(at + 20, true);
  if (end > bytes.length || (method !== 0 && method !== 8)) return "broken-workbook";
  return {
    part: {
      name: new TextDecoder("utf-8").decode(bytes.subarray(at + 46, at + 46 + nameLength)),
      packed: bytes.subarray(start, end),
      deflated: method === 8,
      checksum: view.getUint32(at + 16, true),
    },
    next: at + 46 + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true),
  };
}

/** The parts of a zip file by name. Source: PKWARE APPNOTE 6.3.10, 4.3; without zip64, which no file within the limits needs. */
export function zipParts(bytes: Uint8Array): ReadonlyMap<string, ZipPart> | WorkbookTrouble {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = endPlace(view);
  if (end < 0) return "broken-workbook";
  const count = view.getUint16(end + 10, true);
  if (count > limits.workbookParts.value) return "too-many-parts";
  const parts = new Map<string, ZipPart>();
  let at = view.getUint32(end + 16, true);
  for (let left = count; left > 0; left--) {
    const found = partAt(bytes, view, at);
    if (typeof found === "string") return found;
    parts.set(found.part.name, found.part);
    at = found.next;
  }
  return parts;
}
