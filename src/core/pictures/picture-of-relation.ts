// A relation: points by group, the line of the finding's slope through each group, and the band of its interval.
import type { Answer, Estimate, Picture, PictureLayer, PicturePoint } from "../base/index.ts";
import { scaleFactor } from "../units/index.ts";
import type { FittedLine } from "./fitted-line.ts";
import { fittedLine } from "./fitted-line.ts";
import { groupAt, measuredPoints, usedIndices } from "./measured-points.ts";
import type { PictureColumns } from "./picture-columns.ts";
import { pictureDescription } from "./picture-description.ts";
import { pointsLayer } from "./points-layer.ts";
import { shownValues } from "./shown-values.ts";

const isSlope = (estimate: Estimate) => /^(slope|exponent)/.test(estimate.name);

/** The slope of a group's own line where the finding has one, else the common slope. */
const slopeFor = (finding: Answer, group: string | null): Estimate | undefined =>
  (group === null
    ? undefined
    : finding.estimate.find((estimate) => isSlope(estimate) && estimate.name.endsWith(` within ${group}`))) ??
  finding.estimate.find(isSlope);

type Coordinates = { readonly name: string | null; readonly x: readonly number[]; readonly y: readonly number[] };

/** A group of one point has no line: it would be a line of no length. */
function coordinates(
  points: readonly PicturePoint[],
  groups: readonly string[],
  logarithmic: boolean,
): readonly Coordinates[] {
  const usable = points.filter(
    (point) =>
      typeof point.x === "number" && typeof point.y === "number" && (!logarithmic || (point.x > 0 && point.y > 0)),
  );
  const names: readonly (string | null)[] = groups.length === 0 ? [null] : groups;
  return names
    .map((name) => {
      const own = usable.filter((point) => name === null || point.group === name);
      return { name, x: own.map((point) => Number(point.x)), y: own.map((point) => Number(point.y)) };
    })
    .filter((group) => group.x.length > 1);
}

function layersOf(line: FittedLine, name: string | null, slope: Estimate): readonly PictureLayer[] {
  const group = name === null ? {} : { group: name };
  const whose = name === null ? "line" : `line of ${name}`;
  return [
    ...(line.band.length === 0
      ? []
      : [
          {
            kind: "band",
            ...group,
            words: `${Math.round(slope.level * 100)} % interval of the ${whose}`,
            at: line.band,
          } as const,
        ]),
    { kind: "line", ...group, words: whose, at: line.at },
  ];
}

function lineLayers(
  finding: Answer,
  points: readonly PicturePoint[],
  groups: readonly string[],
  perUnit: number,
  logarithmic: boolean,
): readonly PictureLayer[] {
  const lines = coordinates(points, groups, logarithmic);
  const common = new Set(lines.map((line) => slopeFor(finding, line.name))).size === 1;
  const layers: PictureLayer[] = [];
  for (const [index, line] of lines.entries()) {
    const slope = slopeFor(finding, line.name);
    if (slope === undefined) continue;
    const by = logarithmic ? 1 : scaleFactor(slope.unit) / perUnit;
    const shown = {
      ...slope,
      value: slope.value * by,
      low: slope.low * by,
      high: slope.high * by,
      ...(slope.standardError === undefined ? {} : { standardError: slope.standardError * by }),
    };
    const fitted = common ? fittedLine(lines, shown, logarithmic)[index] : fittedLine([line], shown, logarithmic)[0];
    if (fitted) layers.push(...layersOf(fitted, line.name, slope));
  }
  return [...layers.filter((layer) => layer.kind === "band"), ...layers.filter((layer) => layer.kind === "line")];
}

/** y against x with the finding's own slope. The line of an answer that allows for other columns is drawn at their means. */
export function pictureOfRelation(finding: Answer, columns: PictureColumns): Picture | undefined {
  if (!columns.x) return undefined;
  const [x, y] = [shownValues(columns.x), shownValues(columns.y)];
  const points = measuredPoints(columns.table, usedIndices(columns.table, finding.rows.used), x, y, (row) =>
    groupAt(columns.group, row),
  );
  const groups = (columns.group?.names ?? []).filter((name) => points.some((point) => point.group === name));
  const perUnit = scaleFactor(y.axis.unit) / scaleFactor(x.axis.unit);
  const straight = x.axis.kind === "number" && y.axis.kind === "number";
  return {
    title: `${y.axis.label} against ${x.axis.label}`,
    description: pictureDescription(finding, points, groups, x.axis, y.axis),
    x: x.axis,
    y: y.axis,
    groups,
    layers: [
      ...(straight ? lineLayers(finding, points, groups, perUnit, columns.powerLaw ?? false) : []),
      pointsLayer(points),
    ],
  };
}
