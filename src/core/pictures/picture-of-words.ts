// Words of tonal notes: how often each was used, group by group, as intervals. The notes themselves are no points on an axis.
import type { Answer, Picture } from "../base/index.ts";
import { unitForDisplay } from "../units/index.ts";
import type { PictureColumns } from "./picture-columns.ts";
import { pictureDescription } from "./picture-description.ts";

const MOST = 20;

/** One interval for each estimate of the answer that is in the unit of the first; nothing where there is none. */
export function pictureOfWords(finding: Answer, columns: PictureColumns): Picture | undefined {
  const unit = finding.estimate[0]?.unit;
  if (unit === undefined) return undefined;
  const intervals = finding.estimate
    .filter((estimate) => unitForDisplay(estimate.unit) === unitForDisplay(unit))
    .slice(0, MOST)
    .map(({ name, value, low, high }) => ({ label: name, value, low, high }));
  const x = { label: "estimate", unit, kind: "number" } as const;
  const y = {
    label: columns.y.name.replaceAll("_", " "),
    unit: "1",
    kind: "label",
    order: intervals.map((interval) => interval.label),
  } as const;
  return {
    title: `Words of ${y.label}`,
    description: pictureDescription(finding, [], [], x, y),
    x,
    y,
    groups: [],
    layers: [{ kind: "intervals", intervals }],
  };
}
