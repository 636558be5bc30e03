// Fisher's test of a table of any size: every table with these margins where they are few, tables drawn at random where they are many.
import type { Generator } from "../../base/index.ts";
import { logGamma } from "../../numerics/index.ts";
import { NO_MORE_LIKELY } from "./fisher-p.ts";

export type TableP = { readonly p: number; readonly tables: number; readonly drawn: boolean };

/** More tables than this are drawn and not counted. */
const MOST_TABLES = 2_000_000;

const logFactorials = (most: number): Float64Array =>
  Float64Array.from({ length: most + 1 }, (_, n) => logGamma(n + 1));
const sum = (list: readonly number[]): number => list.reduce((total, one) => total + one, 0);

type Margins = { readonly rows: readonly number[]; readonly columns: readonly number[]; readonly constant: number };

function marginsOf(table: readonly (readonly number[])[], log: Float64Array): Margins {
  const rows = table.map(sum);
  const columns = (table[0] ?? []).map((_, j) => sum(table.map((row) => row[j] ?? 0)));
  const factorials = (list: readonly number[]) => list.reduce((total, n) => total + (log[n] ?? 0), 0);
  return { rows, columns, constant: factorials(rows) + factorials(columns) - (log[sum(rows)] ?? 0) };
}

/** Sum of the probabilities that are no more likely than `seen`, cell by cell, column by column; null when there are too many tables. */
function counted({ rows, columns, constant }: Margins, log: Float64Array, seen: number): TableP | null {
  const left = [...rows];
  let [p, tables] = [0, 0];
  function fill(column: number, row: number, open: number, cells: number): boolean {
    if (column === columns.length - 1) {
      tables++;
      if (tables > MOST_TABLES) return false;
      const whole = left.reduce((total, n) => total - (log[n] ?? 0), cells) + constant;
      if (whole <= seen + Math.log(NO_MORE_LIKELY)) p += Math.exp(whole);
      return true;
    }
    if (row === rows.length - 1) {
      const rest = left[row] ?? 0;
      if (open > rest) return true;
      left[row] = rest - open;
      const go = fill(column + 1, 0, columns[column + 1] ?? 0, cells - (log[open] ?? 0));
      left[row] = rest;
      return go;
    }
    const rest = left[row] ?? 0;
    for (let n = 0; n <= Math.min(open, rest); n++) {
      left[row] = rest - n;
      const go = fill(column, row + 1, open - n, cells - (log[n] ?? 0));
      left[row] = rest;
      if (!go) return false;
    }
    return true;
  }
  return fill(0, 0, columns[0] ?? 0, 0) ? { p: Math.min(1, p), tables, drawn: false } : null;
}

/** The share, with the table seen counted in, of tables drawn with these margins (labels shuffled) that are no more likely. */
function drawnP(
  { rows, columns, constant }: Margins,
  log: Float64Array,
  seen: number,
  draws: number,
  stream: Generator,
): TableP {
  const labels = Int32Array.from(columns.flatMap((n, j) => Array.from({ length: n }, () => j)));
  const cells = new Int32Array(columns.length);
  let unlikely = 1;
  for (let draw = 0; draw < draws; draw++) {
    for (let i = labels.length - 1; i > 0; i--) {
      const j = Math.floor(stream.next() * (i + 1));
      [labels[i], labels[j]] = [labels[j] as number, labels[i] as number];
    }
    let [whole, at] = [constant, 0];
    for (const size of rows) {
      cells.fill(0);
      for (const end = at + size; at < end; at++) {
        const label = labels[at] as number;
        cells[label] = (cells[label] as number) + 1;
      }
      for (const n of cells) whole -= log[n] ?? 0;
    }
    if (whole <= seen + Math.log(NO_MORE_LIKELY)) unlikely++;
  }
  return { p: unlikely / (draws + 1), tables: draws, drawn: true };
}

/**
 * Two-sided exact p of a table of counts with all margins given: the probability of the tables that are no more likely than the one seen.
 * table: rows of whole counts, at least 2 x 2 after empty rows and columns are left out. draws, stream: used only above 2,000,000 tables.
 * Source: Freeman and Halton (1951), Biometrika 38, 141-149; Phipson and Smyth (2010) for the drawn p.
 */
export function tableP(table: readonly (readonly number[])[], draws: number, stream: Generator): TableP {
  const log = logFactorials(sum(table.map(sum)));
  const margins = marginsOf(table, log);
  const seen = table.reduce((total, row) => row.reduce((part, n) => part - (log[n] ?? 0), total), margins.constant);
  return counted(margins, log, seen) ?? drawnP(margins, log, seen, draws, stream);
}
