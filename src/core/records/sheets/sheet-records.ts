import type { RawRecords } from "../source/raw-records.ts";
import type { StoredCell } from "../source/stored-cell.ts";
import type { SheetBlock } from "./sheet-blocks.ts";
import type { SheetGrid } from "./sheet-grid.ts";
import { twoRowHeaders } from "./two-row-headers.ts";

/** The first cell of each row of a block, by row: a place in the block's cells. */
function rowStarts({ rows }: SheetGrid, { cells }: SheetBlock): ReadonlyMap<number, number> {
  const starts = new Map<number, number>();
  for (const [place, at] of cells.entries()) {
    const row = rows[at] ?? 0;
    if (!starts.has(row)) starts.set(row, place);
  }
  return starts;
}

/** The records of a block as they stand in its sheet: a row is a record as wide as the block, a blank row one without fields. */
export function sheetRecords(grid: SheetGrid, block: SheetBlock): RawRecords {
  const { rows, columns, raws, stored } = grid;
  const { left, right, cells } = block;
  const width = right - left + 1;
  const starts = rowStarts(grid, block);
  const rowAt = (row: number): string[] => {
    const fields = Array<string>(starts.has(row) ? width : 0).fill("");
    for (let place = starts.get(row) ?? cells.length; rows[cells[place] ?? -1] === row; place++)
      fields[(columns[cells[place] ?? 0] ?? 0) - left] = raws[cells[place] ?? 0] ?? "";
    return fields;
  };
  const own = grid.merges.filter((merge) => merge.left >= left && merge.left <= right);
  const headers = twoRowHeaders(rowAt, own, left);
  const first = rows[cells[0] ?? 0] ?? 0;
  const count = (rows[cells.at(-1) ?? 0] ?? 0) - first + 1;
  const most = starts.size * width;
  const [begins, ends, firsts] = [new Int32Array(most), new Int32Array(most), new Int32Array(count + 1)];
  const kept = new Array<StoredCell | undefined>(most);
  const parts: string[] = [];
  let [field, end] = [0, 0];
  const put = (raw: string) => {
    parts.push(raw);
    begins[field] = end;
    end += raw.length;
    ends[field++] = end;
  };
  for (let record = 0; record < count; record++) {
    const row = first + record;
    firsts[record] = field;
    const header = headers.get(row);
    if (header) for (const name of header) put(name);
    let place = header ? cells.length : (starts.get(row) ?? cells.length);
    for (let column = left; place < cells.length && column <= right; column++) {
      const at = cells[place] ?? 0;
      const isHere = rows[at] === row && columns[at] === column;
      const cell = isHere ? stored[at] : undefined;
      if (cell && cell.as !== "text") kept[field] = cell;
      put(isHere ? (raws[at] ?? "") : "");
      if (isHere && place < cells.length - 1) place++;
    }
  }
  firsts[count] = field;
  return {
    count,
    from: first + 1,
    text: parts.join(""),
    starts: begins,
    ends,
    firsts,
    apart: new Map(),
    codes: new Map(),
    stored: kept,
    joined: new Set([...headers].filter(([, names]) => names.length === 0).map(([row]) => row - first)),
  };
}
