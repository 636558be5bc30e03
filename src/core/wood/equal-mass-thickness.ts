import { sources } from "./sources.ts";
import { positive, woodDensity, woodMethod } from "./wood-method.ts";

/**
 * Thickness at which a second plate weighs the same: h2 = h1 density1/density2. Result: m. Source: definition.
 */
export const equalMassThickness = (thickness: number, density1: number, density2: number): number =>
  (thickness * density1) / density2;

export const equalMassThicknessMethod = woodMethod({
  id: "equal-mass-thickness",
  name: "thickness of equal mass per area",
  inputs: {
    thickness: positive("m", "thickness of the first"),
    density1: woodDensity("density of the first"),
    density2: woodDensity("density of the second"),
  },
  fields: { thickness: { meaning: "thickness of the second", dimension: "m" } },
  source: sources.equalRule,
  run: ({ thickness, density1, density2 }) => ({ thickness: equalMassThickness(thickness, density1, density2) }),
});
