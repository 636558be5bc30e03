// The sheets of a workbook, whatever its format: what it is its content decides, not its name.
import { limits } from "../../base/index.ts";
import { odsGrids } from "./ods-grids.ts";
import type { SheetGrid } from "./sheet-grid.ts";
import { type WorkbookParts, workbookParts } from "./workbook-parts.ts";
import type { WorkbookTrouble } from "./workbook-trouble.ts";
import { xlsxGrids } from "./xlsx-grids.ts";

/** Whether a file is an ODS workbook by its own first part. */
async function isOds(parts: WorkbookParts): Promise<boolean> {
  if (!parts.has("mimetype") || !parts.has("content.xml")) return false;
  const type = await parts.text("mimetype");
  return typeof type !== "string" && type.text.trim().startsWith("application/vnd.oasis.opendocument.spreadsheet");
}

/** The sheets of a zip file's bytes, or why there are none to read. */
export async function workbookGrids(bytes: Uint8Array): Promise<readonly SheetGrid[] | WorkbookTrouble> {
  const parts = workbookParts(bytes);
  if (typeof parts === "string") return parts;
  const left = { count: limits.workbookCells.value };
  return (await isOds(parts)) ? odsGrids(parts, left) : xlsxGrids(parts, left);
}
