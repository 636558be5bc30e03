import { power } from "../base/index.ts";
import { sources } from "./sources.ts";
import { leftOut, notNegative, positive, woodMethod, woodModulus } from "./wood-method.ts";

/**
 * Bending stiffness of a plate for each unit of width: D = E h^3 / (12 (1 - poissonProduct)).
 * youngsModulus: Pa, along the bend; thickness: m; poissonProduct: nu_LR nu_RL, 0 by default (a strip), about 0.011 for spruce. Result: N m. Source: thin plate.
 */
export const bendingStiffness = (youngsModulus: number, thickness: number, poissonProduct = 0): number =>
  (youngsModulus * power(thickness, 3)) / (12 * (1 - poissonProduct));

export const bendingStiffnessMethod = woodMethod({
  id: "bending-stiffness",
  name: "bending stiffness of a plate",
  inputs: {
    youngsModulus: woodModulus("Young's modulus"),
    thickness: positive("m", "thickness"),
    poissonProduct: leftOut({ ...notNegative("1", "product of the two Poisson ratios"), below: 1 }, 0),
  },
  fields: { bendingStiffness: { meaning: "bending stiffness per width", dimension: "N.m" } },
  source: sources.plate,
  run: ({ youngsModulus, thickness, poissonProduct }) => ({
    bendingStiffness: bendingStiffness(youngsModulus, thickness, poissonProduct),
  }),
});
