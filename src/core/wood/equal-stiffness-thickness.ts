import { sources } from "./sources.ts";
import { positive, woodMethod, woodModulus } from "./wood-method.ts";

/**
 * Thickness at which a second plate is as stiff in bending as the first: h2 = h1 (E1/E2)^(1/3). The exponent behind "stiffer tops end up thinner".
 * thickness: m; moduli: same unit; all > 0. Result: m. Same outline. Source: E h^3 equal. @example equalStiffnessThickness(0.0025, 11, 13) -> 0.0023646
 */
export const equalStiffnessThickness = (thickness: number, modulus1: number, modulus2: number): number =>
  thickness * Math.cbrt(modulus1 / modulus2);

export const equalStiffnessThicknessMethod = woodMethod({
  id: "equal-stiffness-thickness",
  name: "thickness of equal bending stiffness",
  inputs: {
    thickness: positive("m", "thickness of the first"),
    modulus1: woodModulus("Young's modulus of the first"),
    modulus2: woodModulus("Young's modulus of the second"),
  },
  fields: { thickness: { meaning: "thickness of the second", dimension: "m" } },
  source: sources.equalRule,
  run: ({ thickness, modulus1, modulus2 }) => ({ thickness: equalStiffnessThickness(thickness, modulus1, modulus2) }),
});
