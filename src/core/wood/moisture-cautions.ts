import type { Caution } from "../base/index.ts";
import { fibreSaturation } from "./fibre-saturation.ts";

/** A fraction as percent with four digits at most: 0.45 -> "45 %". */
export const percentInWords = (fraction: number): string => `${Number((100 * fraction).toPrecision(4))} %`;

/** The caution of a moisture content, as a fraction, above fibre saturation. */
export const fibreSaturationCautions = (...moistures: readonly number[]): readonly Caution[] => {
  const highest = Math.max(...moistures);
  return highest > fibreSaturation
    ? [{ code: "above-fibre-saturation", facts: { moisture: percentInWords(highest) } }]
    : [];
};

/** The caution of a moisture content, as a fraction, at or above the one where a property stops changing. */
export const intersectionCautions = (moisture: number, intersection: number): readonly Caution[] =>
  moisture > intersection
    ? [
        {
          code: "above-intersection",
          facts: { moisture: percentInWords(moisture), intersection: percentInWords(intersection) },
        },
      ]
    : [];

/** What moisture contents call for, by name. */
export const moistureCautions = {
  fibreSaturation: fibreSaturationCautions,
  intersection: intersectionCautions,
} as const;
