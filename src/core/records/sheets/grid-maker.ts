import { limits } from "../../base/index.ts";
import type { StoredCell } from "../source/stored-cell.ts";
import type { Merge, SheetGrid } from "./sheet-grid.ts";
import type { WorkbookTrouble } from "./workbook-trouble.ts";

const LAST_ROW = 1_048_575;
export const LAST_COLUMN = 16_383;

const COST_ALONE = 4;

/** How many cells the sheets of one workbook may still have. */
export type CellsLeft = { count: number };

/** Gathers the cells of a sheet in whatever order its file has them; of two for one place the later holds. */
export class GridMaker {
  readonly merges: Merge[] = [];
  readonly hiddenColumns = new Set<number>();
  trouble: WorkbookTrouble | null = null;
  readonly #left: CellsLeft;
  readonly #hiddenRows = new Set<number>();
  #rows: number[] = [];
  #columns: number[] = [];
  #raws: string[] = [];
  #stored: StoredCell[] = [];
  readonly #units = new Map<number, string | null>();
  #inOrder = true;

  constructor(left: CellsLeft) {
    this.#left = left;
  }

  /** A filled cell; one outside the sheet is trouble, for it would be lost. */
  add(row: number, column: number, raw: string, stored: StoredCell): void {
    this.#left.count -= this.#cost(column, stored);
    if (!(row >= 0 && row <= LAST_ROW && column >= 0 && column <= LAST_COLUMN)) this.trouble ??= "broken-workbook";
    else if (this.#left.count < 0) this.trouble ??= "workbook-too-full";
    else if (raw.length > limits.cellCharacters.value) this.trouble ??= "cell-too-long";
    if (this.trouble !== null) return;
    const lastRow = this.#rows.at(-1) ?? -1;
    if (row < lastRow || (row === lastRow && column <= (this.#columns.at(-1) ?? -1))) this.#inOrder = false;
    this.#rows.push(row);
    this.#columns.push(column);
    this.#raws.push(raw);
    this.#stored.push(stored);
  }

  /** What a cell counts: one of many alike costs little; a date, or a number of another unit than its column's first, is read by itself. */
  #cost(column: number, stored: StoredCell): number {
    if (stored.as !== "number") return stored.as === "date" ? COST_ALONE : 1;
    if (!this.#units.has(column)) this.#units.set(column, stored.unit);
    return this.#units.get(column) === stored.unit ? 1 : COST_ALONE;
  }

  hideRow(row: number): void {
    if (this.#rows.at(-1) === row) this.#hiddenRows.add(row);
  }

  finished(name: string): SheetGrid {
    if (!this.#inOrder) this.#sort();
    return {
      name,
      hidden: false,
      rows: this.#rows,
      columns: this.#columns,
      raws: this.#raws,
      stored: this.#stored,
      merges: this.merges,
      hiddenRows: this.#hiddenRows,
      hiddenColumns: this.hiddenColumns,
    };
  }

  #sort(): void {
    const key = (at: number) => (this.#rows[at] ?? 0) * (LAST_COLUMN + 1) + (this.#columns[at] ?? 0);
    const order = this.#rows.map((_, at) => at).sort((a, b) => key(a) - key(b) || a - b);
    const kept = order.filter((at, place) => key(at) !== key(order[place + 1] ?? -1) || place === order.length - 1);
    const sorted = <T>(list: readonly T[]) => kept.map((at) => list[at] as T);
    [this.#columns, this.#raws, this.#stored] = [sorted(this.#columns), sorted(this.#raws), sorted(this.#stored)];
    this.#rows = sorted(this.#rows);
  }
}

/** A hidden sheet: only its name is read. */
export const hiddenGrid = (name: string): SheetGrid => ({
  name,
  hidden: true,
  rows: [],
  columns: [],
  raws: [],
  stored: [],
  merges: [],
  hiddenRows: new Set(),
  hiddenColumns: new Set(),
});
