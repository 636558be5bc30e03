import { sources } from "./sources.ts";
import { positive, woodMethod } from "./wood-method.ts";

/**
 * Thickness for another deflection under the same load: h2 = h1 (y1/y2)^(1/3). thickness, deflections: m. Result: m. Source: deflection goes as 1/(E h^3).
 */
export const equalDeflectionThickness = (thickness: number, deflection1: number, deflection2: number): number =>
  thickness * Math.cbrt(deflection1 / deflection2);

export const equalDeflectionThicknessMethod = woodMethod({
  id: "equal-deflection-thickness",
  name: "thickness for a wanted deflection",
  inputs: {
    thickness: positive("m", "thickness of the first"),
    deflection1: positive("m", "deflection now"),
    deflection2: positive("m", "deflection wanted"),
  },
  fields: { thickness: { meaning: "thickness of the second", dimension: "m" } },
  source: sources.equalRule,
  run: ({ thickness, deflection1, deflection2 }) => ({
    thickness: equalDeflectionThickness(thickness, deflection1, deflection2),
  }),
});
