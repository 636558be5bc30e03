import type { Plate } from "./plate.ts";
import { plateStiffness } from "./plate-stiffness.ts";

/** Shear through the thickness: G_LT along the grain and G_RT (rolling shear) across it in Pa, and the share of the section that carries it, 5/6. */
export type ThicknessShear = {
  readonly shearAlong: number;
  readonly shearAcross: number;
  readonly coefficient: number;
};

/** What multiplies the energies of a shear class: stiffnesses in bending and in shear over areal mass. */
export function shearWeights(
  plate: Plate,
  { shearAlong, shearAcross, coefficient }: ThicknessShear,
): readonly number[] {
  const { thickness, density } = plate;
  const section = coefficient * thickness;
  return [...plateStiffness(plate), section * shearAlong, section * shearAcross].map(
    (stiffness) => stiffness / (density * thickness),
  );
}
