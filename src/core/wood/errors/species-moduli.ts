import { positive, type WoodInput, woodMethod, woodModulus } from "../wood-method.ts";

const ratio = (meaning: string): WoodInput => positive("1", meaning);

/** Moduli of a species from the ratios of a table, and the other Poisson's ratio by reciprocity: nu_RL = nu_LR E_R / E_L. */
export const speciesModuli = woodMethod({
  id: "species-moduli",
  name: "moduli from the elastic ratios of a species",
  inputs: {
    youngsModulus: woodModulus("Young's modulus along the grain"),
    acrossRatio: ratio("E across the grain over E along it"),
    shearRatio: ratio("shear modulus of that plane over E along the grain"),
    poisson: { ...ratio("Poisson's ratio: contraction across under a pull along") },
  },
  fields: {
    acrossModulus: { meaning: "E across the grain", dimension: "Pa" },
    shearModulus: { meaning: "shear modulus", dimension: "Pa" },
    reciprocalPoisson: { meaning: "Poisson's ratio the other way, by reciprocity", dimension: "1" },
    modulusOverShear: { meaning: "E along the grain over the shear modulus", dimension: "1" },
  },
  source: {
    citation:
      "Forest Products Laboratory, Wood Handbook (GTR-190, 2010), tables 5-1 and 5-2; reciprocity of an elastic solid",
    basis: "memory",
  },
  refuses: ({ poisson, acrossRatio }) =>
    poisson ** 2 * acrossRatio < 1
      ? null
      : { name: "poisson", needed: "a value whose square is below E along over E across" },
  run: ({ youngsModulus, acrossRatio, shearRatio, poisson }) => ({
    acrossModulus: youngsModulus * acrossRatio,
    shearModulus: youngsModulus * shearRatio,
    reciprocalPoisson: poisson * acrossRatio,
    modulusOverShear: 1 / shearRatio,
  }),
});
