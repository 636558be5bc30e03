import { lossFields, lossSpecs, qualitySpec } from "./loss-fields.ts";
import { sources } from "./sources.ts";
import { positive, woodMethod } from "./wood-method.ts";

/**
 * Quality factor from the slope of the level in dB/s: tau = 20 log10(e) / slope, Q = pi f tau. frequency: Hz; slope: dB/s, its size. Source: single lightly damped resonator.
 */
export const qualityFromLevelSlope = (frequency: number, slope: number): number =>
  (Math.PI * frequency * 20 * Math.LOG10E) / slope;

export const qualityFromLevelSlopeMethod = woodMethod({
  id: "quality-from-level-slope",
  name: "quality factor from the slope of the level",
  inputs: { frequency: positive("Hz", "resonance frequency"), slope: positive("dB/s", "fall of the level") },
  fields: { quality: qualitySpec, ...lossSpecs },
  source: sources.resonance,
  run: ({ frequency, slope }) => {
    const quality = qualityFromLevelSlope(frequency, slope);
    return { quality, ...lossFields(quality) };
  },
});
