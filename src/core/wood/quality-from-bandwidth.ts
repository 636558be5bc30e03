import { lossFields, lossSpecs, qualitySpec } from "./loss-fields.ts";
import { sources } from "./sources.ts";
import { leftOut, positive, woodMethod } from "./wood-method.ts";

/**
 * Quality factor from the half-power bandwidth: Q = f0 / df (df at -3.01 dB). frequency, bandwidth: Hz. A record of T seconds cannot show a line narrower than about 1/T.
 * Loss tangent 1/Q, damping ratio 1/(2Q), decrement pi/Q. Source: single lightly damped resonator.
 */
export const qualityFromBandwidth = (frequency: number, bandwidth: number): number => frequency / bandwidth;

const inWords = (value: number, unit: string) => `${Number(value.toPrecision(3))} ${unit}`;

export const qualityFromBandwidthMethod = woodMethod({
  id: "quality-from-bandwidth",
  name: "quality factor from bandwidth",
  inputs: {
    frequency: positive("Hz", "resonance frequency"),
    bandwidth: positive("Hz", "width at half power"),
    recordLength: leftOut(positive("s", "length of the recording, where known"), Number.POSITIVE_INFINITY),
  },
  fields: { quality: qualitySpec, ...lossSpecs },
  source: sources.resonance,
  run: ({ frequency, bandwidth }) => {
    const quality = qualityFromBandwidth(frequency, bandwidth);
    return { quality, ...lossFields(quality) };
  },
  cautions: ({ bandwidth, recordLength }) =>
    bandwidth * recordLength >= 1
      ? []
      : [
          {
            code: "window-limited",
            facts: {
              record: inWords(recordLength, "s"),
              resolved: inWords(1 / recordLength, "Hz"),
              bandwidth: inWords(bandwidth, "Hz"),
            },
          },
        ],
});
