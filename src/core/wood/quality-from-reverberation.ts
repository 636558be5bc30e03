import { lossFields, lossSpecs, qualitySpec } from "./loss-fields.ts";
import { sources } from "./sources.ts";
import { positive, woodMethod } from "./wood-method.ts";

/**
 * Quality factor from the time for a fall of 60 dB: Q = pi f T60 / ln 1000. frequency: Hz; time: s. Source: single lightly damped resonator.
 */
export const qualityFromReverberation = (frequency: number, time: number): number =>
  (Math.PI * frequency * time) / Math.log(1000);

export const qualityFromReverberationMethod = woodMethod({
  id: "quality-from-reverberation",
  name: "quality factor from the time for 60 dB",
  inputs: { frequency: positive("Hz", "resonance frequency"), time: positive("s", "time for 60 dB") },
  fields: { quality: qualitySpec, ...lossSpecs },
  source: sources.resonance,
  run: ({ frequency, time }) => {
    const quality = qualityFromReverberation(frequency, time);
    return { quality, ...lossFields(quality) };
  },
});
