import { power } from "../base/index.ts";
import { sources } from "./sources.ts";
import { woodDensity, woodMethod, woodModulus } from "./wood-method.ts";

/**
 * Radiation ratio R = c / density = sqrt(E / density^3): how loud a plate can be for its weight at equal frequency.
 * youngsModulus: Pa; density: kg/m3. Result: m4/(kg s); spruce 11 to 15. Source: from the definition of c.
 */
export const radiationRatio = (youngsModulus: number, density: number): number =>
  Math.sqrt(youngsModulus / power(density, 3));

export const radiationRatioMethod = woodMethod({
  id: "radiation-ratio",
  name: "radiation ratio",
  inputs: { youngsModulus: woodModulus("Young's modulus"), density: woodDensity() },
  fields: { radiationRatio: { meaning: "sound speed over density", dimension: "m4/(kg.s)" } },
  source: sources.rod,
  run: ({ youngsModulus, density }) => ({ radiationRatio: radiationRatio(youngsModulus, density) }),
});
