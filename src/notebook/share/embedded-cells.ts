// Raw cells on their way into a copy and out again: what all cells of a column share is said once.
import type { TraceCell } from "../../core/base/index.ts";

/** Row, raw text, reading, and what reading says of it; in full where the cell is from elsewhere than the column's others. */
type EmbeddedCell = readonly [row: number, raw: string, reading: string, warning?: string] | TraceCell;

/**
 * File, table, column number and name of the cells; the cell shown at each row, null where a row has none; `behind`: all cells of the rows (from 0) whose
 * value comes of several.
 */
export type EmbeddedCells = {
  readonly column: string;
  readonly file: string;
  readonly table: string;
  readonly col: number;
  readonly cells: readonly (EmbeddedCell | null)[];
  readonly behind?: readonly { readonly index: number; readonly cells: readonly EmbeddedCell[] }[];
};

/** Without what an edit took away: the log of edits is no part of a copy. */
const asItStands = ({ before: _, ...cell }: TraceCell): TraceCell => cell;

/** The cells of a column, in the order of the table's rows: the one shown, and where a row has several, all of them. */
export function embeddedCells(
  column: string,
  cells: readonly (TraceCell | null)[],
  several: ReadonlyMap<number, readonly TraceCell[]> = new Map(),
): EmbeddedCells {
  const first = cells.find((cell) => cell !== null) ?? [...several.values()][0]?.[0];
  const { file, table, col } = first ?? { file: "", table: "", col: 0 };
  const short = (cell: TraceCell): EmbeddedCell => {
    const { row, raw, reading, warning } = cell;
    if (cell.column !== column || cell.file !== file || cell.table !== table || cell.col !== col)
      return asItStands(cell);
    return warning === undefined ? [row, raw, reading] : [row, raw, reading, warning];
  };
  const behind = [...several].map(([index, all]) => ({ index, cells: all.map(short) }));
  return {
    column,
    file,
    table,
    col,
    cells: cells.map((cell) => cell && short(cell)),
    ...(behind.length > 0 ? { behind } : {}),
  };
}

const whole = (cell: EmbeddedCell, { file, table, col, column }: EmbeddedCells): TraceCell => {
  if (!("length" in cell)) return cell;
  const [row, raw, reading, warning] = cell;
  return { file, table, row, col, column, raw, reading, ...(warning === undefined ? {} : { warning }) };
};

/** The cells back, as they went in. */
export const cellsFromEmbedded = (embedded: EmbeddedCells): readonly (TraceCell | null)[] =>
  embedded.cells.map((cell) => cell && whole(cell, embedded));

/** All cells of the rows that have several. */
export const severalFromEmbedded = (embedded: EmbeddedCells): ReadonlyMap<number, readonly TraceCell[]> =>
  new Map(
    (embedded.behind ?? []).map(({ index, cells }) => [index, cells.map((cell) => whole(cell, embedded))] as const),
  );
