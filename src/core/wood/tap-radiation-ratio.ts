import { power } from "../base/index.ts";
import { FREE_BAR_CONSTANT } from "./free-bar-roots.ts";
import { sources } from "./sources.ts";
import { usualRanges } from "./usual-ranges.ts";
import { positive, woodMethod } from "./wood-method.ts";

/**
 * Radiation ratio from a tap test, without any thickness: R = 0.972838 f L^3 b / m. The thickness cancels, so this is the surest number of a tap test.
 * mass: kg; length, width: m; frequency: lowest bending frequency held free, Hz. Result: m4/(kg s). Source: free bar, thickness eliminated.
 */
export const tapRadiationRatio = (mass: number, length: number, width: number, frequency: number): number =>
  (Math.sqrt(FREE_BAR_CONSTANT) * frequency * power(length, 3) * width) / mass;

export const tapRadiationRatioMethod = woodMethod({
  id: "tap-radiation-ratio",
  name: "radiation ratio from a tap, no thickness needed",
  inputs: {
    mass: positive("kg", "mass of the piece"),
    length: positive("m", "length along the grain"),
    width: positive("m", "width across the grain"),
    frequency: positive("Hz", "lowest bending frequency, held free"),
  },
  fields: {
    radiationRatio: { meaning: "sound speed over density", dimension: "m4/(kg.s)", usual: usualRanges.radiationRatio },
  },
  source: sources.beamTheory,
  run: ({ mass, length, width, frequency }) => ({ radiationRatio: tapRadiationRatio(mass, length, width, frequency) }),
});
