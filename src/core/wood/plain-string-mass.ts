import { sources } from "./sources.ts";
import { usualRanges } from "./usual-ranges.ts";
import { positive, woodMethod } from "./wood-method.ts";

/**
 * Mass per length of a plain string: mu = density pi d^2 / 4. density: kg/m3; diameter: m. Result: kg/m. Source: definition.
 */
export const plainStringMass = (density: number, diameter: number): number => (density * Math.PI * diameter ** 2) / 4;

export const plainStringMassMethod = woodMethod({
  id: "plain-string-mass",
  name: "mass per length of a plain string",
  inputs: {
    density: positive("kg/m3", "density"),
    diameter: { ...positive("m", "diameter"), usual: usualRanges.stringDiameter },
  },
  fields: { unitMass: { meaning: "mass per length", dimension: "kg/m" } },
  source: sources.definition,
  run: ({ density, diameter }) => ({ unitMass: plainStringMass(density, diameter) }),
});
