import { shearCoefficient } from "./shear-coefficient.ts";
import { sources } from "./sources.ts";
import { usualRanges } from "./usual-ranges.ts";
import { positive, woodMethod } from "./wood-method.ts";

/**
 * Factor by which the modulus of a thick bar is too low when shear and rotary inertia are left out (lowest mode, first order):
 * T = 1 + (h/L)^2/12 [49.481 + 12.303 (E/G)/k], k = 5/6 (coefficient). E = T E_uncorrected.
 * slenderness: h/L, 0 < h/L < 0.1; modulusRatio: E/G (spruce along the grain about 16). Relative 3e-3 up to h/L = 0.08.
 * Source: first-order expansion of the exact Timoshenko beam. @example barShearFactor(0.02, 16) -> 1.0095
 */
export const barShearFactor = (slenderness: number, modulusRatio: number, coefficient = 5 / 6): number =>
  1 + (slenderness ** 2 / 12) * (49.481 + (12.303 * modulusRatio) / coefficient);

export const barShearFactorMethod = woodMethod({
  id: "bar-shear-factor",
  name: "shear factor of a thick bar",
  inputs: {
    slenderness: { ...positive("1", "thickness over length"), usual: usualRanges.slendernessFirstOrder },
    modulusRatio: positive("1", "Young's modulus over shear modulus"),
    coefficient: shearCoefficient,
  },
  fields: { factor: { meaning: "true over uncorrected modulus", dimension: "1" } },
  source: sources.timoshenko,
  run: ({ slenderness, modulusRatio, coefficient }) => ({
    factor: barShearFactor(slenderness, modulusRatio, coefficient),
  }),
});
