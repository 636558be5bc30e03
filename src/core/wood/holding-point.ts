import { sources } from "./sources.ts";
import { positive, woodMethod } from "./wood-method.ts";

/**
 * Where to hold a bar so that it rings free: 0.22416 of the length from either end (nodes of the lowest bending shape). length: m. Result: m. Source: free bar.
 */
export const holdingPoint = (length: number): number => 0.2241575 * length;

export const holdingPointMethod = woodMethod({
  id: "holding-points",
  name: "holding points of a free bar",
  inputs: { length: positive("m", "length along the grain") },
  fields: {
    near: { meaning: "distance of the first point from the end", dimension: "m" },
    far: { meaning: "distance of the second point from the same end", dimension: "m" },
  },
  source: sources.beamTheory,
  run: ({ length }) => ({ near: holdingPoint(length), far: length - holdingPoint(length) }),
});
