import { sources } from "./sources.ts";
import { positive, woodMethod } from "./wood-method.ts";

/**
 * Half-power bandwidth of a resonance whose amplitude falls to 1/e in `time`: df = 1/(pi tau). time: s, of the amplitude (that of the energy is
 * half of it). Result: Hz. Source: single lightly damped resonator.
 */
export const bandwidthFromDecay = (time: number): number => 1 / (Math.PI * time);

export const bandwidthFromDecayMethod = woodMethod({
  id: "bandwidth-from-decay",
  name: "bandwidth from the decay time",
  inputs: { time: positive("s", "amplitude falls to 1/e in this time") },
  fields: {
    bandwidth: { meaning: "width at half power", dimension: "Hz" },
    levelSlope: { meaning: "fall of the level", dimension: "dB/s" },
  },
  source: sources.resonance,
  run: ({ time }) => ({ bandwidth: bandwidthFromDecay(time), levelSlope: (20 * Math.LOG10E) / time }),
});
