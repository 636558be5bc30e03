import { sources } from "./sources.ts";
import { woodDensity, woodMethod, woodModulus } from "./wood-method.ts";

/**
 * Characteristic impedance z = density c = sqrt(E density). youngsModulus: Pa; density: kg/m3. Result: kg/(m2 s). Source: plane wave in a rod.
 */
export const impedance = (youngsModulus: number, density: number): number => Math.sqrt(youngsModulus * density);

export const impedanceMethod = woodMethod({
  id: "impedance",
  name: "characteristic impedance",
  inputs: { youngsModulus: woodModulus("Young's modulus"), density: woodDensity() },
  fields: { impedance: { meaning: "density times sound speed", dimension: "kg/(m2.s)" } },
  source: sources.rod,
  run: ({ youngsModulus, density }) => ({ impedance: impedance(youngsModulus, density) }),
});
