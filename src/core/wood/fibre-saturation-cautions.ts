import type { Caution } from "../base/index.ts";
import { fibreSaturation } from "./fibre-saturation.ts";
import { percentInWords } from "./percent-in-words.ts";

/** The caution of a moisture content, as a fraction, above fibre saturation. */
export const fibreSaturationCautions = (...moistures: readonly number[]): readonly Caution[] => {
  const highest = Math.max(...moistures);
  return highest > fibreSaturation
    ? [{ code: "above-fibre-saturation", facts: { moisture: percentInWords(highest) } }]
    : [];
};
