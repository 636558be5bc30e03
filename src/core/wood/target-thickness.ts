import { power } from "../base/index.ts";
import { sources } from "./sources.ts";
import { usualRanges } from "./usual-ranges.ts";
import { leftOut, notNegative, positive, woodDensity, woodMethod, woodModulus } from "./wood-method.ts";

/**
 * Thickness at which a bare, simply supported rectangle rings at a wanted frequency:
 * h = (2 f/pi) sqrt(12 density / {E_L/(mu a^4) + 2 [nu_RL E_L/mu + 2 G]/(a^2 b^2) + E_R/(mu b^4)}), mu = 1 - nu_LR nu_RL, nu_RL = nu_LR E_R/E_L.
 * frequency: Hz; length a along, width b across the grain: m; density: kg/m3; moduli: Pa; poisson nu_LR with nu_LR^2 < E_L/E_R. Result: m.
 * A number to compare with, no prediction for a braced top. Source: orthotropic plate, closed form.
 */
export function targetThickness(
  frequency: number,
  length: number,
  width: number,
  density: number,
  along: number,
  across: number,
  shear: number,
  poisson: number,
): number {
  const poissonAcross = (poisson * across) / along;
  const mu = 1 - poisson * poissonAcross;
  const twist = (2 * ((poissonAcross * along) / mu + 2 * shear)) / (length ** 2 * width ** 2);
  const bending = along / (mu * power(length, 4)) + twist + across / (mu * power(width, 4));
  return ((2 * frequency) / Math.PI) * Math.sqrt((12 * density) / bending);
}

export const targetThicknessMethod = woodMethod({
  id: "target-thickness",
  name: "thickness for a wanted frequency, simply supported rectangle",
  inputs: {
    frequency: positive("Hz", "frequency wanted"),
    length: positive("m", "length along the grain"),
    width: positive("m", "width across the grain"),
    density: woodDensity(),
    along: woodModulus("Young's modulus along the grain"),
    across: woodModulus("Young's modulus across the grain"),
    shear: positive("Pa", "shear modulus of the face"),
    poisson: leftOut(notNegative("1", "Poisson ratio nu_LR"), 0.37),
  },
  fields: { thickness: { meaning: "thickness", dimension: "m", usual: usualRanges.plateThickness } },
  source: sources.plate,
  refuses: ({ along, across, poisson }) =>
    poisson ** 2 < along / across
      ? null
      : { name: "poisson (Poisson ratio nu_LR)", needed: "its square below the ratio of the moduli along and across" },
  run: ({ frequency, length, width, density, along, across, shear, poisson }) => ({
    thickness: targetThickness(frequency, length, width, density, along, across, shear, poisson),
  }),
});
