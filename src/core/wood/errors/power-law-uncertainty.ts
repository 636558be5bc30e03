import { covarianceOf, type FirstOrder, firstOrderUncertainty } from "../../numerics/index.ts";

/** How a quantity goes with what it is computed from: the exponent of each input of a product of powers. */
export type Exponents = Readonly<Record<string, number>>;

/** Exponents of what is computed from a strip or bar that was weighed, measured and tapped. Source: the formulas of each. */
export const BAR_EXPONENTS = {
  youngsModulus: { mass: 1, frequency: 2, length: 3, width: -1, thickness: -3 },
  density: { mass: 1, length: -1, width: -1, thickness: -1 },
  radiationRatio: { mass: -1, frequency: 1, length: 3, width: 1 },
  soundSpeed: { frequency: 1, length: 2, thickness: -1 },
} as const satisfies Readonly<Record<string, Exponents>>;

/** Young's modulus in three-point bending. */
export const THREE_POINT_EXPONENTS = { force: 1, length: 3, width: -1, thickness: -3, deflection: -1 } as const;

/** Moduli of a free plate from its bending and twisting modes, by the strip and twist formulas: a along, b across the grain. */
export const PLATE_EXPONENTS = {
  alongModulus: { mass: 1, frequency: 2, length: 3, width: -1, thickness: -3 },
  acrossModulus: { mass: 1, frequency: 2, length: -1, width: 3, thickness: -3 },
  shearModulus: { mass: 1, frequency: 2, length: 1, width: 1, thickness: -3 },
} as const satisfies Readonly<Record<string, Exponents>>;

/**
 * Relative standard uncertainty of a product of powers: the law of propagation, the exponents its sensitivities. Exact to first order.
 * exponents: by input; relative: relative standard uncertainty of each, >= 0. Inputs independent. Result: relative, with the share of each input.
 * Source: JCGM 100:2008, 5.1.6, equation 12.
 * @example powerLawUncertainty({ f: 2, h: -3 }, { f: 0.003, h: 0.01 }).standard // 0.030594
 */
export function powerLawUncertainty(exponents: Exponents, relative: Readonly<Record<string, number>>): FirstOrder {
  const names = Object.keys(exponents);
  return firstOrderUncertainty(
    names.map((name) => exponents[name] ?? 0),
    covarianceOf(names.map((name) => relative[name] ?? 0)),
  );
}
