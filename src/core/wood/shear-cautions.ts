import type { Caution } from "../base/index.ts";

/** From this length over thickness on, shear and rotary inertia are left out without a word. */
const SLENDER = 20;

/** The caution of a bar or plate too thick for formulas that leave shear and rotary inertia out. what: the extent that is short. Both in m. */
export const shearCautions = (what: string, extent: number, thickness: number): readonly Caution[] =>
  extent < SLENDER * thickness
    ? [
        {
          code: "shear-left-out",
          facts: { what: `${what} over thickness`, ratio: (extent / thickness).toFixed(1), limit: SLENDER },
        },
      ]
    : [];
