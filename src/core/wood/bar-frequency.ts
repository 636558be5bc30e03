import { freeBarRoot } from "./free-bar-root.ts";
import { modeInput } from "./mode-input.ts";
import { shearCautions } from "./shear-cautions.ts";
import { sources } from "./sources.ts";
import { leftOut, positive, woodDensity, woodMethod, woodModulus } from "./wood-method.ts";

/**
 * Bending frequency of a free bar: f_n = x_n^2 h / (4 pi sqrt(3) L^2) sqrt(E/density).
 * youngsModulus: Pa; density: kg/m3; length, thickness: m; mode: 1, 2, 3 … Result: Hz. Thin bars only. Source: as barYoungsModulus.
 */
export const barFrequency = (
  youngsModulus: number,
  density: number,
  length: number,
  thickness: number,
  mode = 1,
): number =>
  (freeBarRoot(mode) ** 2 * thickness * Math.sqrt(youngsModulus / density)) /
  (4 * Math.PI * Math.sqrt(3) * length ** 2);

export const barFrequencyMethod = woodMethod({
  id: "bar-frequency",
  name: "bending frequency of a free bar",
  inputs: {
    youngsModulus: woodModulus("Young's modulus"),
    density: woodDensity(),
    length: positive("m", "length along the grain"),
    thickness: positive("m", "thickness"),
    mode: leftOut(modeInput, 1),
  },
  fields: { frequency: { meaning: "bending frequency", dimension: "Hz" } },
  source: sources.beamTheory,
  run: ({ youngsModulus, density, length, thickness, mode }) => ({
    frequency: barFrequency(youngsModulus, density, length, thickness, mode),
  }),
  cautions: ({ length, thickness }) => shearCautions("Length", length, thickness),
});
