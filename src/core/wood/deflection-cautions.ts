import type { Caution } from "../base/index.ts";
import { percentInWords } from "./percent-in-words.ts";

/** Deflection over span up to which bending is taken as small: its square, which the formulas leave out, is then a hundredth. Common practice, no source. */
const SMALL = 0.1;

/** The caution of a deflection too large for formulas of small bending. deflection, span: m. */
export const deflectionCautions = (deflection: number, span: number): readonly Caution[] =>
  deflection > SMALL * span
    ? [
        {
          code: "large-deflection",
          facts: { share: percentInWords(Number((deflection / span).toPrecision(2))), limit: percentInWords(SMALL) },
        },
      ]
    : [];
