// The sheets of an XLSX workbook. Source: ECMA-376 part 1, 18.2 (workbook).
import type { CellFormat } from "./cell-format.ts";
import { cellFormats } from "./cell-formats.ts";
import { type CellsLeft, hiddenGrid } from "./grid-maker.ts";
import { MarkupReader } from "./markup-reader.ts";
import { type Relation, relations } from "./relations.ts";
import { sharedStrings } from "./shared-strings.ts";
import type { SheetGrid } from "./sheet-grid.ts";
import type { WorkbookParts } from "./workbook-parts.ts";
import type { WorkbookTrouble } from "./workbook-trouble.ts";
import { type XlsxCommon, xlsxSheet } from "./xlsx-sheet.ts";

type Listed = { readonly name: string; readonly hidden: boolean; readonly relation: string };

/** The sheets that a workbook lists, and the system of its dates. */
function contents(markup: string): { sheets: Listed[]; system: 1900 | 1904 } | WorkbookTrouble {
  const reader = new MarkupReader(markup);
  const sheets: Listed[] = [];
  let system: 1900 | 1904 = 1900;
  for (let step = reader.next(); step !== "end"; step = reader.next()) {
    if (step !== "open") continue;
    if (reader.name === "workbookPr" && /^(?:1|true)$/.test(reader.attribute("date1904") ?? "")) system = 1904;
    if (reader.name === "sheet")
      sheets.push({
        name: reader.attribute("name") ?? "",
        hidden: /^(?:hidden|veryHidden)$/.test(reader.attribute("state") ?? ""),
        relation: reader.attribute(":id") ?? "",
      });
  }
  return reader.trouble ?? { sheets, system };
}

/** The part with the workbook itself, by the file's own word, else where it usually lies. */
async function workbookPart(parts: WorkbookParts): Promise<string | null> {
  const own = await relations(parts, "");
  const stated = typeof own === "string" ? [] : [...own.values()].filter(({ type }) => type === "officeDocument");
  return [stated[0]?.part, "xl/workbook.xml"].find((name) => name && parts.has(name)) ?? null;
}

/** What a part gives that every sheet may need; nothing where the workbook has no such part. */
async function common<T>(
  parts: WorkbookParts,
  own: ReadonlyMap<string, Relation>,
  type: string,
  read: (markup: string) => readonly T[] | WorkbookTrouble,
): Promise<readonly T[] | WorkbookTrouble> {
  const part = [...own.values()].find((relation) => relation.type === type)?.part;
  if (!part || !parts.has(part)) return [];
  const source = await parts.text(part);
  return typeof source === "string" ? source : read(source.text);
}

async function listedGrid(
  parts: WorkbookParts,
  { name, hidden }: Listed,
  relation: Relation | undefined,
  shared: XlsxCommon,
): Promise<SheetGrid | WorkbookTrouble> {
  if (hidden) return hiddenGrid(name);
  if (!relation) return "broken-workbook";
  if (relation.part === null) return "unsafe-workbook";
  const source = await parts.text(relation.part);
  return typeof source === "string" ? source : xlsxSheet(source.text, name, shared);
}

/** The grids of an XLSX workbook's sheets, in its order; sheets that are pictures have none. */
export async function xlsxGrids(
  parts: WorkbookParts,
  left: CellsLeft,
): Promise<readonly SheetGrid[] | WorkbookTrouble> {
  const book = await workbookPart(parts);
  if (book === null) return "not-a-table";
  const source = await parts.text(book);
  const listed = typeof source === "string" ? source : contents(source.text);
  if (typeof listed === "string") return listed;
  const own = await relations(parts, book);
  if (typeof own === "string") return own;
  const strings = await common<string>(parts, own, "sharedStrings", sharedStrings);
  if (typeof strings === "string") return strings;
  const formats = await common<CellFormat>(parts, own, "styles", (markup) => cellFormats(markup, listed.system));
  if (typeof formats === "string") return formats;
  const grids: SheetGrid[] = [];
  for (const sheet of listed.sheets) {
    const relation = own.get(sheet.relation);
    if (relation && relation.type !== "worksheet") continue;
    const grid = await listedGrid(parts, sheet, relation, { strings, formats, left });
    if (typeof grid === "string") return grid;
    grids.push(grid);
  }
  return grids;
}
