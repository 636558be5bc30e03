// A comparison: each group's interval beside its points, one row a group, so that long names stay readable.
import type { Answer, Picture, PictureLayer } from "../base/index.ts";
import { scaleFactor, unitForDisplay } from "../units/index.ts";
import { groupAt, measuredPoints, usedIndices } from "./measured-points.ts";
import type { PictureColumns } from "./picture-columns.ts";
import { pictureDescription } from "./picture-description.ts";
import { pointsLayer } from "./points-layer.ts";
import { shownValues } from "./shown-values.ts";

/** Estimates that belong to one group alone: the name ends in the group's name, and names no other group beside it. */
function groupIntervals(
  finding: Answer,
  names: readonly string[],
  unit: string,
): Extract<PictureLayer, { kind: "intervals" }>["intervals"] {
  return names.flatMap((name) => {
    const own = finding.estimate.find(
      (estimate) =>
        (estimate.name.endsWith(` ${name}`) || estimate.name === name) &&
        !/\bdifference\b|\bminus\b|\bless\b|\bthan\b/.test(estimate.name) &&
        (unitForDisplay(estimate.unit) === unitForDisplay(unit) || scaleFactor(estimate.unit) === scaleFactor(unit)),
    );
    return own ? [{ label: name, value: own.value, low: own.low, high: own.high }] : [];
  });
}

/** Values along x, groups down y, with the interval of each group's middle where the finding has one. */
export function pictureOfComparison(finding: Answer, columns: PictureColumns): Picture | undefined {
  const group = columns.group;
  if (!group) return undefined;
  const [value, label] = [shownValues(columns.y), shownValues(group)];
  const points = measuredPoints(columns.table, usedIndices(columns.table, finding.rows.used), value, label, (row) =>
    groupAt(group, row),
  );
  const names = group.names.filter((name) => points.some((point) => point.group === name));
  const intervals = value.axis.kind === "number" ? groupIntervals(finding, names, value.axis.unit) : [];
  return {
    title: `${value.axis.label} across ${label.axis.label}`,
    description: pictureDescription(finding, points, names, value.axis, label.axis),
    x: value.axis,
    y: { ...label.axis, order: names },
    groups: names,
    layers: [pointsLayer(points), ...(intervals.length === 0 ? [] : [{ kind: "intervals", intervals } as const])],
  };
}
