import { power } from "../base/index.ts";
import { radiationRatio } from "./radiation-ratio.ts";
import { sources } from "./sources.ts";
import { woodDensity, woodMethod, woodModulus } from "./wood-method.ts";

/**
 * Areal mass of a second wood over that of the first at equal bending stiffness, (density2/density1)(E1/E2)^(1/3). Pa, kg/m3. Result: 1. Source: mass as density h.
 */
export const massAtEqualStiffness = (modulus1: number, density1: number, modulus2: number, density2: number): number =>
  (density2 / density1) * Math.cbrt(modulus1 / modulus2);

/** The same at equal frequency: R1/R2, sqrt(density2^3 E1/(density1^3 E2)). */
export const massAtEqualFrequency = (modulus1: number, density1: number, modulus2: number, density2: number): number =>
  Math.sqrt((power(density2 / density1, 3) * modulus1) / modulus2);

export const substitutionMassMethod = woodMethod({
  id: "substitution-mass",
  name: "what a plate of another wood weighs",
  inputs: {
    modulus1: woodModulus("Young's modulus of the first"),
    density1: woodDensity("density of the first"),
    modulus2: woodModulus("Young's modulus of the second"),
    density2: woodDensity("density of the second"),
  },
  fields: {
    atEqualStiffness: { meaning: "mass of the second over the first at equal bending stiffness", dimension: "1" },
    atEqualFrequency: { meaning: "mass of the second over the first at equal frequency", dimension: "1" },
    radiationRatios: { meaning: "radiation ratio of the second over the first", dimension: "1" },
  },
  source: sources.equalRule,
  run: ({ modulus1, density1, modulus2, density2 }) => ({
    atEqualStiffness: massAtEqualStiffness(modulus1, density1, modulus2, density2),
    atEqualFrequency: massAtEqualFrequency(modulus1, density1, modulus2, density2),
    radiationRatios: radiationRatio(modulus2, density2) / radiationRatio(modulus1, density1),
  }),
});
