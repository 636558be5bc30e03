import { power } from "../../base/index.ts";
import type { Plate } from "./plate.ts";

/** Bending stiffnesses of a plate in N m: along D_L, across D_R, coupling D_1, twist D_k. */
export type PlateStiffness = readonly [along: number, across: number, coupling: number, twist: number];

const poissonProduct = ({ along, across, poisson }: Pick<Plate, "along" | "across" | "poisson">) =>
  (poisson ** 2 * across) / along;

/**
 * Bending stiffnesses of a thin orthotropic plate: D_L = E_L h^3/(12 mu), D_R = E_R h^3/(12 mu), D_1 = nu_LR D_R, D_k = G h^3/12,
 * mu = 1 - nu_LR^2 E_R/E_L. Needs nu_LR^2 < E_L/E_R. Source: Lekhnitskii, Anisotropic Plates (1968), section 9.
 */
export function plateStiffness(plate: Omit<Plate, "length" | "width" | "density">): PlateStiffness {
  const cube = power(plate.thickness, 3) / 12;
  const mu = 1 - poissonProduct(plate);
  const across = (plate.across * cube) / mu;
  return [(plate.along * cube) / mu, across, plate.poisson * across, plate.shear * cube];
}

/** How each stiffness grows with the logarithms of E_L, E_R and G at a fixed Poisson ratio: its derivative over itself, a row a modulus. */
export function stiffnessGrowth(
  plate: Pick<Plate, "along" | "across" | "poisson">,
): readonly [along: PlateStiffness, across: PlateStiffness, shear: PlateStiffness] {
  const share = poissonProduct(plate);
  const lean = share / (1 - share);
  return [
    [1 - lean, -lean, -lean, 0],
    [lean, 1 + lean, 1 + lean, 0],
    [0, 0, 0, 1],
  ];
}
