import type { Caution } from "../base/index.ts";

/** The caution of a shape too short for a formula that leaves its ends out. what: "Length over width"; extent, other: m; limit: of extent over other. */
export const shortShapeCautions = (what: string, extent: number, other: number, limit: number): readonly Caution[] =>
  extent < limit * other
    ? [{ code: "shape-too-short", facts: { what, ratio: (extent / other).toFixed(1), limit } }]
    : [];
