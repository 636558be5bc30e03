import { declined, type Outcome, succeeded } from "../../base/index.ts";
import { classModes } from "./class-modes.ts";
import { energyWeights } from "./energy-weights.ts";
import { legendreIntegrals } from "./legendre-integrals.ts";
import { lowestMode } from "./lowest-mode.ts";
import { moduliGuess } from "./moduli-guess.ts";
import { moduliStep, type PlateSquares } from "./moduli-step.ts";
import { parityClass } from "./parity-class.ts";
import type { Plate } from "./plate.ts";
import { POLYNOMIALS } from "./plate-modes.ts";
import { SHEAR_POLYNOMIALS } from "./plate-modes-with-shear.ts";
import { type PlateSlopes, plateSlopes } from "./plate-slopes.ts";
import { shearClass } from "./shear-class.ts";
import { shearWeights, type ThicknessShear } from "./shear-weights.ts";

/** A plate whose moduli are wanted. */
export type BlankPlate = Omit<Plate, "along" | "across" | "shear">;
/** Frequencies in Hz of the first bending along the grain, of the first across it, and of the twist. */
export type PlateFrequencies = PlateSquares;
export type PlateModuli = {
  readonly along: number;
  readonly across: number;
  readonly shear: number;
  /** Newton steps made. */
  readonly steps: number;
  /** Size of the last step, as a share of the moduli. */
  readonly lastStep: number;
};

const STEPS = 25;
const CLOSE = 1e-10;
/** Hertz for a sentence: three figures are enough there. */
const inWords = ({ long, cross }: PlateFrequencies) => ({
  along: `${Number(long.toPrecision(4))} Hz along`,
  across: `${Number(cross.toPrecision(4))} Hz across`,
});
const square = (frequency: number) => (2 * Math.PI * frequency) ** 2;
const isAdmissible = ({ along, across, poisson }: Plate) => poisson ** 2 * across < along;

/** Slopes of a plate's modes as a function of its moduli: what does not depend on them is made once. */
type SlopesByModuli = (plate: Plate) => PlateSlopes;

function thinSlopes(): SlopesByModuli {
  const integrals = legendreIntegrals(POLYNOMIALS);
  const even = parityClass(integrals, POLYNOMIALS, 0, 0);
  const odd = parityClass(integrals, POLYNOMIALS, 1, 1);
  return (plate) => {
    const weights = energyWeights(plate);
    return plateSlopes(plate, classModes(even, weights), lowestMode(odd, weights));
  };
}

/** Ten polynomials are enough for bending (1e-5); the twist needs those of plateModesWithShear. */
function slopesWithShear(blank: BlankPlate, throughThickness: ThicknessShear): SlopesByModuli {
  const even = shearClass(legendreIntegrals(10), 10, 0, 0, blank);
  const odd = shearClass(legendreIntegrals(SHEAR_POLYNOMIALS), SHEAR_POLYNOMIALS, 1, 1, blank);
  return (plate) => {
    const weights = shearWeights(plate, throughThickness);
    return plateSlopes(plate, classModes(even, weights), lowestMode(odd, weights));
  };
}

/** Newton's steps from a first guess until no modulus moves by more than 1e-10 of itself. */
function refined(guess: Plate, slopes: SlopesByModuli, frequencies: PlateFrequencies): Outcome<PlateModuli> {
  const wanted = { long: square(frequencies.long), cross: square(frequencies.cross), twist: square(frequencies.twist) };
  let plate = guess;
  for (let steps = 1; steps <= STEPS; steps++) {
    if (!isAdmissible(plate)) return declined("poisson-too-large", { poisson: String(plate.poisson) });
    const { change, isReachable } = moduliStep(slopes(plate), wanted);
    const [along, across, shear] = change.map((share) => 1 + Math.max(-0.5, Math.min(1, share)));
    plate = {
      ...plate,
      along: plate.along * (along ?? 1),
      across: plate.across * (across ?? 1),
      shear: plate.shear * (shear ?? 1),
    };
    const lastStep = Math.max(...change.map(Math.abs));
    if (!(lastStep < CLOSE)) continue;
    if (!isReachable) break;
    if (plate.along < plate.across) return declined("axes-swapped", inWords(frequencies));
    return succeeded({ along: plate.along, across: plate.across, shear: plate.shear, steps, lastStep });
  }
  return declined("modes-too-close", inWords(frequencies));
}

/**
 * E_L, E_R and G_LR of a free thin plate from three of its frequencies, nu_LR being given: strip formulas, then Newton on the Ritz model with exact derivatives.
 * blank: SI; frequencies: Hz, each with its name. Converged when no modulus moves by more than 1e-10 of itself; 3 to 5 steps are usual, 25 the most.
 * Declines where along comes out below across (axes swapped?), where nu_LR^2 >= E_L/E_R, and where the two bending frequencies are closer together than any
 * plate of this outline has them. throughThickness: shear through the thickness and rotary inertia are then allowed for; they hardly depend on the moduli
 * sought. Source: McIntyre and Woodhouse, Acta Metall. 36 (1988) 1397-1416 (three modes); derivatives by Hellmann and Feynman.
 */
export function plateModuli(
  blank: BlankPlate,
  frequencies: PlateFrequencies,
  throughThickness?: ThicknessShear,
): Outcome<PlateModuli> {
  const guess: Plate = { ...blank, ...moduliGuess(blank, frequencies) };
  if (guess.along < 0.7 * guess.across) return declined("axes-swapped", inWords(frequencies));
  const slopes = throughThickness ? slopesWithShear(blank, throughThickness) : thinSlopes();
  return refined(guess, slopes, frequencies);
}
