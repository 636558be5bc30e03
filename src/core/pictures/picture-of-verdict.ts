// A verdict: which instruments were finished before the rule was stated, and which after, for only the latter are a test.
import type { Answer, Picture } from "../base/index.ts";
import { measuredPoints, usedIndices } from "./measured-points.ts";
import type { PictureColumns } from "./picture-columns.ts";
import { pictureDescription } from "./picture-description.ts";
import { pictureOfComparison } from "./picture-of-comparison.ts";
import { pictureOfRelation } from "./picture-of-relation.ts";
import { pointsLayer } from "./points-layer.ts";
import { shownValues } from "./shown-values.ts";

const PERIODS = ["finished before it was stated", "finished since", "date not known"] as const;

function periodAt(stated: NonNullable<PictureColumns["stated"]>, row: number): (typeof PERIODS)[number] {
  const finished = stated.finished[row];
  if (finished === undefined || !Number.isFinite(finished)) return PERIODS[2];
  return finished < stated.days ? PERIODS[0] : PERIODS[1];
}

/** Points of y against x, marked by before and after the rule's date; without a date, as a relation or a comparison. */
export function pictureOfVerdict(finding: Answer, columns: PictureColumns): Picture | undefined {
  if (!columns.x) return pictureOfComparison(finding, columns);
  if (!columns.stated) return pictureOfRelation(finding, columns);
  const stated = columns.stated;
  const periods = new Set(usedIndices(columns.table, finding.rows.used).map((row) => periodAt(stated, row)));
  // Where all took part since, as in a test, the groups say more than the date.
  if (columns.group && periods.size === 1) return pictureOfRelation(finding, columns);
  const [x, y] = [shownValues(columns.x), shownValues(columns.y)];
  const points = measuredPoints(columns.table, usedIndices(columns.table, finding.rows.used), x, y, (row) =>
    periodAt(stated, row),
  );
  const groups = PERIODS.filter((period) => points.some((point) => point.group === period));
  return {
    title: `${y.axis.label} against ${x.axis.label}, before and after the rule was stated`,
    description: pictureDescription(finding, points, groups, x.axis, y.axis),
    x: x.axis,
    y: y.axis,
    groups,
    layers: [pointsLayer(points)],
  };
}
