// The points of a picture: one for each row that takes part, with the piece's name, its group and its error bars.
import type { PicturePoint, RowRef } from "../base/index.ts";
import type { ColumnTable, LabelColumn } from "../columns/index.ts";
import { pointLabel } from "./point-label.ts";
import type { ShownValues } from "./shown-values.ts";

/** Index of each row that a finding used, in the table's order. Rows of another table are passed over. */
export function usedIndices(table: ColumnTable, used: readonly RowRef[]): readonly number[] {
  const numbers = new Set(used.map((row) => row.row));
  return table.rows.flatMap((row, index) => (numbers.has(row.row) ? [index] : []));
}

/** Name of a row's group; null where it is missing or there are none. */
export const groupAt = (group: LabelColumn | null | undefined, row: number): string | null =>
  group?.names[group.codes[row] ?? -1] ?? null;

type Spread = { readonly xLow?: number; readonly xHigh?: number; readonly yLow?: number; readonly yHigh?: number };

function spreadOf(x: ShownValues, y: ShownValues, row: number): Spread {
  const [xAt, yAt, xBy, yBy] = [x.at(row), y.at(row), x.uncertaintyAt(row), y.uncertaintyAt(row)];
  return {
    ...(typeof xAt === "number" && xBy > 0 ? { xLow: xAt - xBy, xHigh: xAt + xBy } : {}),
    ...(typeof yAt === "number" && yBy > 0 ? { yLow: yAt - yBy, yHigh: yAt + yBy } : {}),
  };
}

/** Points of the rows of which both values are known; bars reach one standard uncertainty either way. */
export function measuredPoints(
  table: ColumnTable,
  indices: readonly number[],
  x: ShownValues,
  y: ShownValues,
  groupOf: (row: number) => string | null,
): readonly PicturePoint[] {
  return indices.flatMap((index) => {
    const [xAt, yAt, row, group] = [x.at(index), y.at(index), table.rows[index], groupOf(index)];
    if (xAt === null || yAt === null || row === undefined) return [];
    return [
      {
        x: xAt,
        y: yAt,
        ...spreadOf(x, y, index),
        ...(group === null ? {} : { group }),
        label: pointLabel(row.piece, index, [y, x], group),
        row,
      },
    ];
  });
}
