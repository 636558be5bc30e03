// Whatever file holds the records: delimited text at once, a workbook once its reader has been fetched.
import type { ReadOptions } from "./read-options.ts";
import type { ReadResult } from "./read-result.ts";
import { readTable } from "./read-table.ts";
import type { SaidOfTable } from "./table-description.ts";

const ZIP = [0x50, 0x4b, 0x03, 0x04];
/** Workbooks of the old kind, and new ones behind a password, lie in a file of this kind. */
const COMPOUND = [0xd0, 0xcf, 0x11, 0xe0];
const begins = (bytes: Uint8Array, head: readonly number[]) => head.every((byte, at) => bytes[at] === byte);

/** How a file of records was read, whatever it is by its content: `readTable` for text. */
export async function readRecords(
  bytes: Uint8Array,
  file: string,
  options: ReadOptions = {},
  said: SaidOfTable = {},
): Promise<ReadResult> {
  if (begins(bytes, ZIP)) return (await import("./sheets/read-workbook.ts")).readWorkbook(bytes, file, options, said);
  const read = readTable(bytes, file, options, said);
  return begins(bytes, COMPOUND) ? { ...read, warnings: [{ code: "old-workbook" }] } : read;
}
