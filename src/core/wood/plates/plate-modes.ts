import { classModes, type SolvedClass } from "./class-modes.ts";
import { energyWeights } from "./energy-weights.ts";
import { legendreIntegrals } from "./legendre-integrals.ts";
import { modeDegrees } from "./mode-degrees.ts";
import { modeName } from "./mode-name.ts";
import { parityClass } from "./parity-class.ts";
import type { Plate } from "./plate.ts";
import { plateSlopes } from "./plate-slopes.ts";

export type PlateMode = { readonly frequency: number; readonly shape: string };

/** How many polynomials each way are used where nothing else is said: six modes to 1e-5. */
export const POLYNOMIALS = 12;

/** The lowest modes of a parity class, the first `rigid` of them left out; known: names that are already known, by place. */
function namedModes(
  { parity, squares, shapes }: SolvedClass,
  count: number,
  rigid: number,
  known: Readonly<Record<number, string>> = {},
): readonly PlateMode[] {
  const names = modeDegrees(shapes.slice(0, count + 6), parity.degrees);
  return Array.from(squares.slice(rigid, count + rigid), (square, index) => {
    const [along, across] = names[index + rigid] ?? [0, 0];
    return {
      frequency: Math.sqrt(square) / (2 * Math.PI),
      shape: known[index + rigid] ?? modeName(along, across),
    };
  });
}

/** The modes of a plate by parity: even or odd along, then across. */
export type SolveClass = (oddAlong: number, oddAcross: number) => SolvedClass;
export type PlateModes = {
  readonly lowest: readonly PlateMode[];
  readonly long: number;
  readonly cross: number;
  readonly twist: number;
};

const frequencyOf = ({ square }: { readonly square: number }) => Math.sqrt(square) / (2 * Math.PI);

/** The lowest modes of a free plate over all four parity classes, and the three that tell its moduli. */
export function modesOf(plate: Plate, solve: SolveClass, count: number): PlateModes {
  const [even, odd] = [solve(0, 0), solve(1, 1)];
  const { long, cross, twist } = plateSlopes(plate, even, odd);
  const lowest = [
    ...namedModes(even, count, 1, { [long.at]: "long1", [cross.at]: "cross1" }),
    ...namedModes(odd, count, 0),
    ...namedModes(solve(1, 0), count, 1),
    ...namedModes(solve(0, 1), count, 1),
  ].sort((one, other) => one.frequency - other.frequency);
  return {
    lowest: lowest.slice(0, count),
    long: frequencyOf(long),
    cross: frequencyOf(cross),
    twist: frequencyOf(twist),
  };
}

/**
 * The lowest modes of a free, thin, rectangular plate of wood in a vacuum, lowest first, rigid motions left out.
 * Rayleigh and Ritz: energy of bending least over products of Legendre polynomials; frequencies approach the true ones from above.
 * plate: SI, nu_LR^2 < E_L/E_R. modes: how many; polynomials: how many each way, 4 or more. Result: Hz, and each shape's name (modeName).
 * Accuracy with 12 polynomials: 1e-5 for six modes; shear through the thickness and the air are left out.
 * Source: Leissa, J. Sound Vib. 31(3) (1973) 257-293 (method); basis as in Bhat, J. Sound Vib. 102(4) (1985) 493-499.
 */
export function plateModes(plate: Plate, modes = 6, polynomials = POLYNOMIALS): PlateModes {
  const integrals = legendreIntegrals(polynomials);
  const weights = energyWeights(plate);
  return modesOf(
    plate,
    (oddAlong, oddAcross) => classModes(parityClass(integrals, polynomials, oddAlong, oddAcross), weights),
    modes,
  );
}
