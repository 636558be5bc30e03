// A sheet's tables side by side: wholly empty columns part them, the left one first.
import { limits } from "../../base/index.ts";
import type { Merge, SheetGrid } from "./sheet-grid.ts";

/** A stretch of columns, from and to inclusive, with its cells: places in the grid. */
export type SheetBlock = { readonly left: number; readonly right: number; readonly cells: readonly number[] };

/** How many filled cells each row has, where that is more than one. */
function fullerRows({ rows }: SheetGrid): ReadonlySet<number> {
  const fuller = new Set<number>();
  for (let at = 1; at < rows.length; at++) if (rows[at] === rows[at - 1]) fuller.add(rows[at] ?? 0);
  return fuller;
}

/** Whether the columns of a merged cell belong together: it stands beside others, and is no title over several tables. */
const joins = ({ top, left, right }: Merge, fuller: ReadonlySet<number>): boolean => right > left && fuller.has(top);

/** The filled columns in order; those beneath a merged cell of a row with others count as filled. */
function filledColumns(grid: SheetGrid): number[] {
  const filled = new Set(grid.columns);
  const fuller = fullerRows(grid);
  const last = Math.max(...filled, 0);
  for (const merge of grid.merges)
    if (joins(merge, fuller) && filled.has(merge.left))
      for (let column = merge.left; column <= Math.min(merge.right, last); column++) filled.add(column);
  return [...filled].sort((a, b) => a - b);
}

/** The blocks of a sheet. */
export function sheetBlocks(grid: SheetGrid): SheetBlock[] {
  const blocks: { left: number; right: number; cells: number[] }[] = [];
  const blockOf = new Map<number, number[]>();
  for (const column of filledColumns(grid)) {
    const before = blocks.at(-1);
    const block = before?.right === column - 1 ? before : { left: column, right: column, cells: [] };
    if (block !== before) blocks.push(block);
    block.right = column;
    blockOf.set(column, block.cells);
  }
  for (const [at, column] of grid.columns.entries()) blockOf.get(column)?.push(at);
  return blocks;
}

/** What of a block is over a stated limit, null if nothing is. */
export function blockOverLimit(grid: SheetGrid, { left, right, cells }: SheetBlock) {
  const width = right - left + 1;
  let rows = 0;
  for (const [place, at] of cells.entries()) if (grid.rows[at] !== grid.rows[cells[place - 1] ?? -1]) rows++;
  if (width > limits.columns.value) return "too-many-columns";
  return rows > limits.rows.value ? "too-many-rows" : rows * width > limits.cells.value ? "too-many-cells" : null;
}
