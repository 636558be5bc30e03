import { classModes } from "./class-modes.ts";
import { legendreIntegrals } from "./legendre-integrals.ts";
import type { Plate } from "./plate.ts";
import { modesOf, type PlateModes } from "./plate-modes.ts";
import { shearClass } from "./shear-class.ts";
import { shearWeights, type ThicknessShear } from "./shear-weights.ts";

/** How many polynomials each way and field are used where nothing else is said: long and cross to 1e-5, twist to 1e-3. */
export const SHEAR_POLYNOMIALS = 16;

/**
 * As plateModes, for a plate that gives way to shear through its thickness and has rotary inertia (first-order shear theory). Across the grain rolling shear
 * counts: a thin plate's formula is 0.3-2 % high there. The turns of the fibres change steeply near the edges, so the twist comes down slowly: 0.2 % above with
 * 12 polynomials, 0.04-0.08 % with 16. Source: Mindlin, J. Appl. Mech. 18 (1951) 31-38, orthotropic; Ritz as in plateModes.
 */
export function plateModesWithShear(
  plate: Plate,
  throughThickness: ThicknessShear,
  modes = 6,
  polynomials = SHEAR_POLYNOMIALS,
): PlateModes {
  const integrals = legendreIntegrals(polynomials);
  const weights = shearWeights(plate, throughThickness);
  return modesOf(
    plate,
    (oddAlong, oddAcross) => classModes(shearClass(integrals, polynomials, oddAlong, oddAcross, plate), weights),
    modes,
  );
}
