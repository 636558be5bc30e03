// A workbook's sheets as tables: each visible one is read as a text would be, from its first used cell.
import { tableLayout } from "../layout/table-layout.ts";
import type { ReadOptions } from "../read-options.ts";
import type { ReadResult, ReadWarning, RecordSetAside, RecordTable } from "../read-result.ts";
import type { SaidOfTable } from "../table-description.ts";
import { tableFromLayout } from "../table-from-layout.ts";
import { blockOverLimit, type SheetBlock, sheetBlocks } from "./sheet-blocks.ts";
import type { SheetGrid } from "./sheet-grid.ts";
import { sheetRecords } from "./sheet-records.ts";
import { withSheetMarks } from "./with-sheet-marks.ts";
import { workbookGrids } from "./workbook-grids.ts";

type Wish = { readonly options: ReadOptions; readonly said: SaidOfTable };
type Found = { readonly tables: RecordTable[]; readonly setAside: RecordSetAside[]; readonly warnings: ReadWarning[] };

/** The tables of one block, added to those found before. `before`: how many its sheet has already. */
function addBlock(grid: SheetGrid, block: SheetBlock, before: number, wish: Wish, found: Found): number {
  const layout = tableLayout(sheetRecords(grid, block), false);
  for (const { record = 0, code } of layout.setAside) found.setAside.push({ sheet: grid.name, record, code });
  for (const [at, one] of layout.tables.entries()) {
    const place = before + at;
    const read = tableFromLayout(one, place === 0 ? grid.name : `${grid.name} ${place + 1}`, wish.options, wish.said);
    const { table, warnings } = withSheetMarks(read, grid, block.left);
    if (one.header === null) found.warnings.push({ code: "no-header" });
    if (one.rows.length === 0) found.warnings.push({ code: "no-rows" });
    const number = found.tables.push(table);
    for (const warning of warnings) found.warnings.push(number === 1 ? warning : { table: number, ...warning });
  }
  return before + layout.tables.length;
}

/** How a workbook was read. `bytes` begin like a zip file; `file`: its name. */
export async function readWorkbook(
  bytes: Uint8Array,
  file: string,
  options: ReadOptions,
  said: SaidOfTable,
): Promise<ReadResult> {
  const head = { file, ...(Object.keys(options).length > 0 ? { options } : {}) };
  const refused = (code: string): ReadResult => ({ ...head, tables: [], setAside: [], warnings: [{ code }] });
  const grids = await workbookGrids(bytes);
  if (typeof grids === "string") return refused(grids);
  const found: Found = { tables: [], setAside: [], warnings: [] };
  for (const grid of grids) {
    if (grid.hidden) found.setAside.push({ sheet: grid.name, code: "hidden-sheet" });
    let count = 0;
    for (const block of sheetBlocks(grid)) {
      const over = blockOverLimit(grid, block);
      if (over !== null) return refused(over);
      count = addBlock(grid, block, count, { options, said }, found);
    }
  }
  if (found.tables.length + found.setAside.length === 0) found.warnings.push({ code: "empty-file" });
  return { ...head, ...found };
}
