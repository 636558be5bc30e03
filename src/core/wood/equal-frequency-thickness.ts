import { sources } from "./sources.ts";
import { positive, woodDensity, woodMethod, woodModulus } from "./wood-method.ts";

/**
 * Thickness at which a second plate of the same outline rings the same: h2 = h1 sqrt(E1 density2 / (E2 density1)). Result: m. Source: frequency goes as h sqrt(E/density).
 */
export const equalFrequencyThickness = (
  thickness: number,
  modulus1: number,
  density1: number,
  modulus2: number,
  density2: number,
): number => thickness * Math.sqrt((modulus1 * density2) / (modulus2 * density1));

export const equalFrequencyThicknessMethod = woodMethod({
  id: "equal-frequency-thickness",
  name: "thickness of equal frequency",
  inputs: {
    thickness: positive("m", "thickness of the first"),
    modulus1: woodModulus("Young's modulus of the first"),
    modulus2: woodModulus("Young's modulus of the second"),
    density1: woodDensity("density of the first"),
    density2: woodDensity("density of the second"),
  },
  fields: { thickness: { meaning: "thickness of the second", dimension: "m" } },
  source: sources.equalRule,
  run: ({ thickness, modulus1, density1, modulus2, density2 }) => ({
    thickness: equalFrequencyThickness(thickness, modulus1, density1, modulus2, density2),
  }),
});
