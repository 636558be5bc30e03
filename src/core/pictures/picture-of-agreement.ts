// Agreement: the difference of two ways of measuring against their mean, with the mean difference and the limits.
import type { Answer, Picture, PictureLayer, PicturePoint } from "../base/index.ts";
import { amountInWords, scaleFactor, unitForDisplay } from "../units/index.ts";
import { groupAt, usedIndices } from "./measured-points.ts";
import type { PictureColumns } from "./picture-columns.ts";
import { pictureDescription } from "./picture-description.ts";
import { pictureOfRelation } from "./picture-of-relation.ts";
import { pointsLayer } from "./points-layer.ts";
import { shownValues } from "./shown-values.ts";

const isLevel = (name: string) => /difference|limit|bias/.test(name) && !/ratio|width|slope/.test(name);

/** Difference against mean for two quantities; grades are drawn one against the other. */
export function pictureOfAgreement(finding: Answer, columns: PictureColumns): Picture | undefined {
  const { y: first, x: second, table } = columns;
  if (!second || first.kind !== "quantity" || second.kind !== "quantity") return pictureOfRelation(finding, columns);
  const [a, b] = [shownValues(first), shownValues(second)];
  const toFirst = scaleFactor(second.unit) / scaleFactor(first.unit);
  const points = usedIndices(table, finding.rows.used).flatMap((index): readonly PicturePoint[] => {
    const [aAt, bAt, row, group] = [a.at(index), b.at(index), table.rows[index], groupAt(columns.group, index)];
    if (typeof aAt !== "number" || typeof bAt !== "number" || row === undefined) return [];
    const difference = aAt - bAt * toFirst;
    return [
      {
        x: (aAt + bAt * toFirst) / 2,
        y: difference,
        ...(group === null ? {} : { group }),
        label: `${row.piece}: ${amountInWords(difference, null, first.unit)} apart`,
        row,
      },
    ];
  });
  const levels = finding.estimate.filter(
    (estimate) => isLevel(estimate.name) && unitForDisplay(estimate.unit) === unitForDisplay(first.unit),
  );
  const groups = (columns.group?.names ?? []).filter((name) => points.some((point) => point.group === name));
  const x = { label: "mean of the two", unit: first.unit, kind: "number" } as const;
  const y = { label: "difference", unit: first.unit, kind: "number" } as const;
  return {
    title: `${a.axis.label} beside ${b.axis.label}`,
    description: pictureDescription(finding, points, groups, x, y),
    x,
    y,
    groups,
    layers: [
      pointsLayer(points),
      ...levels.map((level): PictureLayer => ({ kind: "level", axis: "y", value: level.value, words: level.name })),
    ],
  };
}
