import type { Generator } from "../../base/index.ts";
import { logGamma } from "../../numerics/index.ts";
import { EQUALLY_LIKELY } from "./fisher-probabilities.ts";

/**
 * Fisher's p of a table by drawing tables with its margins: (1 + drawn tables no more likely than the one seen) / (1 + draws). Each record of a
 * row is dealt a column by shuffling, which gives every table its own chance.
 * table: whole numbers >= 0, rows of one length. draws: whole, from 1. Never zero; standard error sqrt(p (1 - p) / draws).
 * Source: A. C. A. Hope (1968), J. R. Stat. Soc. B 30, 582-598.
 */
export function drawnTableP(table: readonly (readonly number[])[], draws: number, generator: Generator): number {
  const columns = table[0]?.length ?? 0;
  const rowOf = Int32Array.from(table.flatMap((row, at) => row.flatMap((count) => new Array<number>(count).fill(at))));
  const columnOf = Int32Array.from(
    table.flatMap((row) => row.flatMap((count, at) => new Array<number>(count).fill(at))),
  );
  const logFactorial = Float64Array.from({ length: rowOf.length + 1 }, (_, n) => (n < 2 ? 0 : logGamma(n + 1)));
  const cells = new Int32Array(table.length * columns);
  const rarity = () => {
    cells.fill(0);
    for (let i = 0; i < rowOf.length; i++) {
      const cell = (rowOf[i] as number) * columns + (columnOf[i] as number);
      cells[cell] = (cells[cell] as number) + 1;
    }
    let sum = 0;
    for (let cell = 0; cell < cells.length; cell++) sum += logFactorial[cells[cell] as number] as number;
    return sum;
  };
  const seen = rarity() - EQUALLY_LIKELY;
  let count = 1;
  for (let draw = 0; draw < draws; draw++) {
    for (let i = columnOf.length - 1; i > 0; i--) {
      const j = Math.floor(generator.next() * (i + 1));
      const held = columnOf[i] as number;
      columnOf[i] = columnOf[j] as number;
      columnOf[j] = held;
    }
    if (rarity() >= seen) count++;
  }
  return count / (draws + 1);
}
