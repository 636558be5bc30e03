// The text alternative of a picture: what, how many, the answer with its interval, exceptions. The one place for its sentences.
import type { Answer, PictureAxis, PicturePoint } from "../base/index.ts";
import { numberInWords } from "../units/index.ts";
import { axisWords } from "./axis-words.ts";
import { MOST_POINTS } from "./points-layer.ts";

const counted = (count: number, one: string) => `${count} ${one}${count === 1 ? "" : "s"}`;

function extent(points: readonly PicturePoint[], along: "x" | "y", axis: PictureAxis): string {
  const values = points.flatMap((point) => (typeof point[along] === "number" ? [point[along] as number] : []));
  if (values.length === 0 || axis.kind !== "number") return "";
  return `${axisWords(axis)} runs from ${numberInWords(
    values.reduce((a, b) => Math.min(a, b)),
    null,
  )} to ${numberInWords(
    values.reduce((a, b) => Math.max(a, b)),
    null,
  )}`;
}

function groupCounts(points: readonly PicturePoint[], groups: readonly string[]): string {
  if (groups.length === 0) return "";
  return ` ${groups.map((group) => `${group} ${points.filter((point) => point.group === group).length}`).join(", ")}.`;
}

/** What the points show, without an answer. */
export function pointsDescription(
  points: readonly PicturePoint[],
  groups: readonly string[],
  x: PictureAxis,
  y: PictureAxis,
): string {
  const ranges = [extent(points, "y", y), extent(points, "x", x)].filter((text) => text !== "").join(", ");
  const thinned = points.length > MOST_POINTS ? ", of which an even part is drawn" : "";
  return `${counted(points.length, "point")}${thinned}.${groupCounts(points, groups)}${ranges === "" ? "" : ` ${ranges}.`}`;
}

/** What an answer's picture shows: the points, the answer as its sentence gives it, and who stands out or takes no part. */
export function pictureDescription(
  finding: Answer,
  points: readonly PicturePoint[],
  groups: readonly string[],
  x: PictureAxis,
  y: PictureAxis,
): string {
  const alone = finding.cautions.find((caution) => caution.code === "one-piece-carries-it");
  const aside = finding.rows.setAside.length;
  return [
    ...(points.length === 0 ? [] : [pointsDescription(points, groups, x, y)]),
    finding.sentence,
    ...(alone ? [alone.sentence] : []),
    ...(aside === 0 ? [] : [`${counted(aside, "record")} set aside.`]),
  ].join(" ");
}
