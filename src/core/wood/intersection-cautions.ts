import type { Caution } from "../base/index.ts";
import { percentInWords } from "./percent-in-words.ts";

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
