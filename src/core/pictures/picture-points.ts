// The picture of a `picture` entry: one column against another, without an answer.
import type { Picture } from "../base/index.ts";
import type { Column, ColumnTable, LabelColumn } from "../columns/index.ts";
import { groupAt, measuredPoints } from "./measured-points.ts";
import { pointsDescription } from "./picture-description.ts";
import { pointsLayer } from "./points-layer.ts";
import { shownValues } from "./shown-values.ts";

/** Points of y against x, with a mark for each group of `by`. mask: 1 where a row takes part; null for all that are not left out. */
export function picturePoints({
  table,
  y,
  x,
  by,
  mask,
}: {
  readonly table: ColumnTable;
  readonly y: Column;
  readonly x: Column;
  readonly by: LabelColumn | null;
  readonly mask: Uint8Array | null;
}): Picture {
  const [xShown, yShown] = [shownValues(x), shownValues(y)];
  const indices = table.rows.flatMap((_, index) =>
    table.leftOut.has(index) || (mask !== null && mask[index] !== 1) ? [] : [index],
  );
  const points = measuredPoints(table, indices, xShown, yShown, (row) => groupAt(by, row));
  const groups = (by?.names ?? []).filter((name) => points.some((point) => point.group === name));
  return {
    title: `${yShown.axis.label} against ${xShown.axis.label}`,
    description: pointsDescription(points, groups, xShown.axis, yShown.axis),
    x: xShown.axis,
    y: yShown.axis,
    groups,
    layers: [pointsLayer(points)],
  };
}
