// Whatever file holds the records: delimited text at once, a workbook once its reader has been fetched.
import type { ReadOptions } from "./read-options.ts";
import type { ReadResult } from "./read-result.ts";
import { readTable } from "./read-table.ts";

/** How a file of records was read, whatever it is by its content: `readTable` for text. */
export async function readRecords(bytes: Uint8Array, file: string, options: ReadOptions = {}): Promise<ReadResult> {
  return readTable(bytes, file, options);
}
