import { shearCoefficient } from "../shear-coefficient.ts";
import { leftOut, notNegative, positive, type WoodInput, woodDensity, woodModulus } from "../wood-method.ts";

/** Arguments that several calculations of plates share. */
export const plateInputs = {
  length: positive("m", "length along the grain"),
  width: positive("m", "width across the grain"),
  thickness: positive("m", "thickness"),
  density: woodDensity(),
  along: woodModulus("Young's modulus along the grain, E_L"),
  across: woodModulus("Young's modulus across the grain, E_R"),
  shear: positive("Pa", "shear modulus of the face, G_LR"),
  poisson: leftOut(notNegative("1", "Poisson ratio nu_LR"), 0.37),
  shearAlong: positive("Pa", "shear modulus through the thickness along the grain, G_LT"),
  shearAcross: positive("Pa", "shear modulus through the thickness across the grain (rolling shear), G_RT"),
  coefficient: shearCoefficient,
} as const satisfies Readonly<Record<string, WoodInput>>;

const whole = (meaning: string, otherwise: number, atLeast: number, atMost: number): WoodInput => ({
  ...leftOut({ kind: "number", dimension: "1", meaning, whole: true, atLeast, atMost }, otherwise),
});
export const modesInput = whole("how many modes, lowest first", 6, 1, 30);
export const polynomialsInput = (otherwise: number, atMost = 24): WoodInput =>
  whole("how many polynomials each way, more is more exact", otherwise, 6, atMost);

/** nu_LR^2 must be below E_L/E_R, or the wood would give energy when bent. */
export const isPoissonAdmissible = (poisson: number, along: number, across: number): boolean =>
  poisson ** 2 * across < along;
