import { power } from "../base/index.ts";
import { sources } from "./sources.ts";
import { notNegative, positive, woodMethod } from "./wood-method.ts";

/**
 * The factor T1 of a thick isotropic bar, lowest bending, which ties the shear modulus to Young's by the Poisson ratio. For wood it corrects about a third of
 * what it should: use barShearFactor. slenderness: thickness/length, to 0.2; poisson: 0 to 0.5. Result: 1.
 * Source: ASTM E1876 (coefficients from memory). @example barIsotropicFactor(0.05, 0.3) -> 1.01797
 */
export function barIsotropicFactor(slenderness: number, poisson: number): number {
  const square = slenderness ** 2;
  const fourth = power(slenderness, 4);
  const below = 1 + 6.338 * (1 + 0.1408 * poisson + 1.536 * poisson ** 2) * square;
  return (
    1 +
    6.585 * (1 + 0.0752 * poisson + 0.8109 * poisson ** 2) * square -
    0.868 * fourth -
    (8.34 * (1 + 0.2023 * poisson + 2.173 * poisson ** 2) * fourth) / below
  );
}

export const barIsotropicFactorMethod = woodMethod({
  id: "bar-isotropic-factor",
  name: "shear factor of a thick isotropic bar",
  inputs: {
    slenderness: positive("1", "thickness over length"),
    poisson: { ...notNegative("1", "Poisson ratio"), atMost: 0.5 },
  },
  fields: {
    factor: { meaning: "true over uncorrected modulus, for metal and the like, not for wood", dimension: "1" },
  },
  source: sources.isotropicFactor,
  run: ({ slenderness, poisson }) => ({ factor: barIsotropicFactor(slenderness, poisson) }),
});
