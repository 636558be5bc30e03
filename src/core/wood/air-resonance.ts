import { sources } from "./sources.ts";
import { usualRanges } from "./usual-ranges.ts";
import { leftOut, notNegative, positive, woodMethod } from "./wood-method.ts";

/**
 * Air resonance of a rigid box: f = (c/2 pi) sqrt(S/(V L_eff)), S = pi r^2, L_eff = t + 2 alpha r, alpha = 8/(3 pi) for each flanged side.
 * soundSpeed: m/s; volume: m3; radius, depth t of the rim: m. Result: Hz. A real instrument reads lower, for its plates breathe. Source: Helmholtz resonator.
 */
export const airResonance = (
  soundSpeed: number,
  volume: number,
  radius: number,
  depth: number,
  endCorrection = 8 / (3 * Math.PI),
): number =>
  (soundSpeed / (2 * Math.PI)) * Math.sqrt((Math.PI * radius ** 2) / (volume * (depth + 2 * endCorrection * radius)));

export const airResonanceMethod = woodMethod({
  id: "air-resonance",
  name: "air resonance of a rigid box",
  inputs: {
    soundSpeed: positive("m/s", "speed of sound in air"),
    volume: { ...positive("m3", "volume of the box"), usual: usualRanges.boxVolume },
    radius: { ...positive("m", "radius of the hole"), usual: usualRanges.soundHole },
    depth: notNegative("m", "thickness of the rim"),
    endCorrection: leftOut(notNegative("1", "end correction a side, in radii"), 8 / (3 * Math.PI)),
  },
  fields: {
    frequency: { meaning: "air resonance", dimension: "Hz" },
    effectiveLength: { meaning: "depth with both end corrections", dimension: "m" },
  },
  source: sources.cavity,
  run: ({ soundSpeed, volume, radius, depth, endCorrection }) => ({
    frequency: airResonance(soundSpeed, volume, radius, depth, endCorrection),
    effectiveLength: depth + 2 * endCorrection * radius,
  }),
});
