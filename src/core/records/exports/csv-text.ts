import papaparse from "papaparse";
import { cellGuard } from "./cell-guard.ts";

/** Records as delimited text of RFC 4180, each cell guarded. The first record is the header. */
export const csvText = (records: readonly (readonly string[])[]): string =>
  `${papaparse.unparse(
    records.map((record) => record.map(cellGuard.on)),
    { delimiter: ",", newline: "\r\n" },
  )}\r\n`;

/** How that text is to be read again, for the description beside it. */
export const csvReadBy = { encoding: "utf-8", delimiter: ",", guarded: true } as const;
