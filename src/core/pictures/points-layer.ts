// The points of a picture as a layer; of very many only every so many-th, for a picture of a hundred thousand dots shows a blot.
import type { PictureLayer, PicturePoint } from "../base/index.ts";

/** More than this is neither seen nor pointed at. */
export const MOST_POINTS = 2000;

/** The layer of points. Above two thousand they are thinned evenly in the table's order; lines and words still rest on all. */
export function pointsLayer(points: readonly PicturePoint[]): Extract<PictureLayer, { kind: "points" }> {
  const every = Math.ceil(points.length / MOST_POINTS);
  return { kind: "points", points: every <= 1 ? points : points.filter((_, index) => index % every === 0) };
}
