// Raw cells on their way into a copy and out again: what all cells of a column share is said once.
import type { TraceCell } from "../../core/base/index.ts";

/** File, table, column number and name of the cells; each cell as row, raw text and reading, null where a row has none. A cell from elsewhere is said in full. */
export type EmbeddedCells = {
  readonly column: string;
  readonly file: string;
  readonly table: string;
  readonly col: number;
  readonly cells: readonly (readonly [row: number, raw: string, reading: string] | TraceCell | null)[];
};

/** The cells of a column, in the order of the table's rows. */
export function embeddedCells(column: string, cells: readonly (TraceCell | null)[]): EmbeddedCells {
  const first = cells.find((cell) => cell !== null);
  const { file, table, col } = first ?? { file: "", table: "", col: 0 };
  const shared = (cell: TraceCell): boolean =>
    cell.column === column && cell.file === file && cell.table === table && cell.col === col;
  return {
    column,
    file,
    table,
    col,
    cells: cells.map((cell) => (cell !== null && shared(cell) ? ([cell.row, cell.raw, cell.reading] as const) : cell)),
  };
}

/** The cells back, as they went in. */
export const cellsFromEmbedded = ({ column, file, table, col, cells }: EmbeddedCells): readonly (TraceCell | null)[] =>
  cells.map((cell) => {
    if (cell === null || !("length" in cell)) return cell;
    const [row, raw, reading] = cell;
    return { file, table, row, col, column, raw, reading };
  });
