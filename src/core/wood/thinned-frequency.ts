import { sources } from "./sources.ts";
import { positive, woodMethod } from "./wood-method.ts";

/**
 * Frequency of a free plate after thinning: f2 = f1 h2/h1. Braces break this. Result: Hz. Source: frequency goes as h.
 */
export const thinnedFrequency = (frequency: number, thickness1: number, thickness2: number): number =>
  (frequency * thickness2) / thickness1;

export const thinnedFrequencyMethod = woodMethod({
  id: "thinned-frequency",
  name: "frequency of a free plate after thinning",
  inputs: {
    frequency: positive("Hz", "frequency now"),
    thickness1: positive("m", "thickness now"),
    thickness2: positive("m", "thickness wanted"),
  },
  fields: { frequency: { meaning: "frequency after thinning", dimension: "Hz" } },
  source: sources.equalRule,
  run: ({ frequency, thickness1, thickness2 }) => ({ frequency: thinnedFrequency(frequency, thickness1, thickness2) }),
});
