// A ranking: one interval a piece, in the order of the answer.
import type { Answer, Picture } from "../base/index.ts";
import type { PictureColumns } from "./picture-columns.ts";
import { pictureDescription } from "./picture-description.ts";
import { shownValues } from "./shown-values.ts";

const MOST = 40;

/** Intervals of the first forty pieces, best on top; the rest are in the answer's list. */
export function pictureOfRanking(finding: Answer, columns: PictureColumns): Picture | undefined {
  const value = shownValues(columns.y);
  const pieces = new Set(finding.rows.used.map((row) => row.piece));
  const intervals = finding.estimate
    .flatMap((estimate) => {
      const label = pieces.has(estimate.name)
        ? estimate.name
        : [...pieces].find((piece) => estimate.name.endsWith(` ${piece}`));
      return label === undefined ? [] : [{ label, value: estimate.value, low: estimate.low, high: estimate.high }];
    })
    .slice(0, MOST);
  if (intervals.length === 0) return undefined;
  const piece = {
    label: "piece",
    unit: "1",
    kind: "label",
    order: intervals.map((interval) => interval.label),
  } as const;
  return {
    title: `pieces by ${value.axis.label}`,
    description: pictureDescription(finding, [], [], value.axis, piece),
    x: value.axis,
    y: piece,
    groups: [],
    layers: [{ kind: "intervals", intervals }],
  };
}
