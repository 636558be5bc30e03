// The sheets of an ODS workbook. Source: OpenDocument 1.3 part 2, 3.4 (encryption), part 3, 3.7 (spreadsheet).
import { type CellsLeft, hiddenGrid } from "./grid-maker.ts";
import { MarkupReader } from "./markup-reader.ts";
import { odsSheet } from "./ods-sheet.ts";
import { noStyles, type OdsStyles, readOdsStyles } from "./ods-styles.ts";
import type { SheetGrid } from "./sheet-grid.ts";
import type { WorkbookParts } from "./workbook-parts.ts";
import type { WorkbookTrouble } from "./workbook-trouble.ts";

const MANIFEST = "META-INF/manifest.xml";

/** Whether a password is needed. */
async function isLocked(parts: WorkbookParts): Promise<boolean | WorkbookTrouble> {
  if (!parts.has(MANIFEST)) return false;
  const source = await parts.text(MANIFEST);
  if (typeof source === "string") return source;
  const reader = new MarkupReader(source.text);
  for (let step = reader.next(); step !== "end"; step = reader.next())
    if (step === "open" && reader.name === "encryption-data") return true;
  return reader.trouble ?? false;
}

/** The named styles, which lie in a part of their own. */
async function namedStyles(parts: WorkbookParts): Promise<OdsStyles | WorkbookTrouble> {
  const styles = noStyles();
  if (!parts.has("styles.xml")) return styles;
  const source = await parts.text("styles.xml");
  if (typeof source === "string") return source;
  const reader = new MarkupReader(source.text);
  readOdsStyles(reader, styles);
  return reader.trouble ?? styles;
}

/** The grids of an ODS workbook's sheets, in its order. */
export async function odsGrids(parts: WorkbookParts, left: CellsLeft): Promise<readonly SheetGrid[] | WorkbookTrouble> {
  const locked = await isLocked(parts);
  if (locked !== false) return locked === true ? "locked-workbook" : locked;
  const styles = await namedStyles(parts);
  if (typeof styles === "string") return styles;
  const source = await parts.text("content.xml");
  if (typeof source === "string") return source;
  const reader = new MarkupReader(source.text);
  readOdsStyles(reader, styles);
  const grids: SheetGrid[] = [];
  for (let step = reader.next(); step !== "end"; step = reader.next()) {
    if (step !== "open" || reader.name !== "table") continue;
    const name = reader.attribute("table:name") ?? "";
    const isHidden = styles.hiddenTables.has(reader.attribute("table:style-name") ?? "");
    const grid = odsSheet(reader, name, styles, left);
    if (typeof grid === "string") return grid;
    grids.push(isHidden ? hiddenGrid(name) : grid);
  }
  return reader.trouble ?? grids;
}
