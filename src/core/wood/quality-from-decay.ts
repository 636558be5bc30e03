import { lossFields, lossSpecs, qualitySpec } from "./loss-fields.ts";
import { sources } from "./sources.ts";
import { positive, woodMethod } from "./wood-method.ts";

/**
 * Quality factor from the time in which the amplitude falls to 1/e: Q = pi f tau. T60 = 6.9078 tau, bandwidth 1/(pi tau).
 * frequency: Hz; time: s, of the amplitude (of the energy it is half of it). Source: single lightly damped resonator.
 */
export const qualityFromDecay = (frequency: number, time: number): number => Math.PI * frequency * time;

export const qualityFromDecayMethod = woodMethod({
  id: "quality-from-decay",
  name: "quality factor from the decay time",
  inputs: {
    frequency: positive("Hz", "resonance frequency"),
    time: positive("s", "amplitude falls to 1/e in this time"),
  },
  fields: {
    quality: qualitySpec,
    reverberation: { meaning: "time for 60 dB", dimension: "s" },
    bandwidth: { meaning: "width at half power", dimension: "Hz" },
    ...lossSpecs,
  },
  source: sources.resonance,
  run: ({ frequency, time }) => {
    const quality = qualityFromDecay(frequency, time);
    return {
      quality,
      reverberation: Math.log(1000) * time,
      bandwidth: 1 / (Math.PI * time),
      ...lossFields(quality),
    };
  },
});
