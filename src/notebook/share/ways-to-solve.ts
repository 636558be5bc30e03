// Whether a column that is held back could be worked out from what stays.
import type { Column, ColumnTable, QuantityColumn } from "../../core/columns/index.ts";
import type { CopyProblem } from "./copy-problems.ts";
import { copyProblem } from "./copy-problems.ts";

const isQuantity = (column: Column | undefined): column is QuantityColumn =>
  column !== undefined && column.kind === "quantity";

/** Rows in which both are known. */
function pairs(a: QuantityColumn, b: QuantityColumn): readonly (readonly [number, number])[] {
  return Array.from(a.values, (value, row) => [value, b.values[row] ?? Number.NaN] as const).filter(
    ([x, y]) => Number.isFinite(x) && Number.isFinite(y),
  );
}

const FEWEST = 4;
const NEARLY = 0.9999;

/** Squared correlation of two columns over the rows that have both: near one means that one gives the other back up to a constant. */
function squaredCorrelation(both: readonly (readonly [number, number])[]): number {
  const meanX = both.reduce((sum, [x]) => sum + x, 0) / both.length;
  const meanY = both.reduce((sum, [, y]) => sum + y, 0) / both.length;
  let [xx, yy, xy] = [0, 0, 0];
  for (const [x, y] of both) {
    xx += (x - meanX) ** 2;
    yy += (y - meanY) ** 2;
    xy += (x - meanX) * (y - meanY);
  }
  return xx > 0 && yy > 0 ? xy ** 2 / (xx * yy) : 0;
}

const givesBack = (hidden: QuantityColumn, kept: QuantityColumn): boolean => {
  const both = pairs(hidden, kept);
  return both.length >= FEWEST && squaredCorrelation(both) > NEARLY;
};

/**
 * Ways back to a column held back: a column that stays and runs along with it, or one that runs along with something that was computed
 * from it, so that its formula could be turned round. asked: the columns held back; hidden: these and all that is made from them.
 */
export function waysToSolve(
  table: ColumnTable,
  asked: ReadonlySet<string>,
  hidden: ReadonlySet<string>,
): readonly CopyProblem[] {
  const kept = [...table.columns.values()].filter(
    (column): column is QuantityColumn => isQuantity(column) && !hidden.has(column.name),
  );
  return [...hidden].flatMap((name) => {
    const column = table.columns.get(name);
    if (!isQuantity(column)) return [];
    return kept
      .filter((other) => givesBack(column, other))
      .map((other) => {
        const target = asked.has(name)
          ? name
          : ([...asked].find((one) => column.origin.from === "formula" && column.origin.roots.includes(one)) ??
            [...asked][0] ??
            name);
        const way =
          asked.has(name) || column.origin.from !== "formula"
            ? `${other.name} rises and falls exactly with ${name}`
            : `${other.name} is the same as ${name}, and ${name} = ${column.origin.formula} can be turned round`;
        return copyProblem("can-be-solved-for", { column: target, from: other.name, way });
      });
  });
}
