import type { CellFormat } from "./cell-format.ts";
import { MarkupReader } from "./markup-reader.ts";
import { numberFormat } from "./number-format.ts";
import type { WorkbookTrouble } from "./workbook-trouble.ts";

/** What a number is under each format that a cell of XLSX may name. Source: ECMA-376 part 1, 18.8.10 (cellXfs), 18.8.30 (numFmt). */
export function cellFormats(markup: string, system: 1900 | 1904): readonly CellFormat[] | WorkbookTrouble {
  const reader = new MarkupReader(markup);
  const codes = new Map<number, string>();
  const ids: number[] = [];
  let inCells = false;
  for (let step = reader.next(); step !== "end"; step = reader.next()) {
    if (reader.name === "cellXfs" && step !== "text") inCells = step === "open";
    if (step !== "open") continue;
    if (reader.name === "numFmt" && !inCells)
      codes.set(Number(reader.attribute("numFmtId")), reader.attribute("formatCode") ?? "");
    else if (reader.name === "xf" && inCells) ids.push(Number(reader.attribute("numFmtId") ?? 0));
  }
  return reader.trouble ?? ids.map((id) => numberFormat(id, codes.get(id), system));
}
