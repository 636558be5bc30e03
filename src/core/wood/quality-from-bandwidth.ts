import { sources } from "./sources.ts";
import { positive, woodMethod } from "./wood-method.ts";

/**
 * Quality factor from the half-power bandwidth: Q = f0 / df (df at -3.01 dB). frequency, bandwidth: Hz. A record of T seconds cannot show a line narrower than about 1/T.
 * Loss tangent 1/Q, damping ratio 1/(2Q), decrement pi/Q. Source: single lightly damped resonator.
 */
export const qualityFromBandwidth = (frequency: number, bandwidth: number): number => frequency / bandwidth;

export const qualityFromBandwidthMethod = woodMethod({
  id: "quality-from-bandwidth",
  name: "quality factor from bandwidth",
  inputs: { frequency: positive("Hz", "resonance frequency"), bandwidth: positive("Hz", "width at half power") },
  fields: {
    quality: { meaning: "quality factor Q", dimension: "1" },
    lossTangent: { meaning: "1/Q", dimension: "1" },
    dampingRatio: { meaning: "1/(2Q)", dimension: "1" },
    decrement: { meaning: "logarithmic decrement, pi/Q", dimension: "1" },
  },
  source: sources.resonance,
  run: ({ frequency, bandwidth }) => {
    const quality = qualityFromBandwidth(frequency, bandwidth);
    return { quality, lossTangent: 1 / quality, dampingRatio: 0.5 / quality, decrement: Math.PI / quality };
  },
});
