import { type Outcome, succeeded } from "../../base/index.ts";
import { type BlankPlate, type PlateFrequencies, type PlateModuli, plateModuli, thinSlopes } from "./plate-moduli.ts";
import { growth } from "./plate-slopes.ts";
import { crossProduct, dot, type Triple, times } from "./triple.ts";

export type ModulusExponents = {
  readonly mass: number;
  readonly long: number;
  readonly cross: number;
  readonly twist: number;
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  readonly poisson: number;
};
export type ModuliSensitivities = PlateModuli & {
  readonly exponents: {
    readonly along: ModulusExponents;
    readonly across: ModulusExponents;
    readonly shear: ModulusExponents;
  };
};

/** How the four energies of a thin plate of a given mass grow with its length, width and Poisson ratio, the moduli being held. */
const lengthRates = [-3, 1, -1, -1];
const widthRates = [1, -3, -1, -1];
const poissonRates = (product: number) => {
  const stiffer = (2 * product) / (1 - product);
  return [stiffer, stiffer, stiffer + 1, 0];
};

/** Rows of the inverse of a matrix of three rows. */
function inverse([a, b, c]: readonly [Triple, Triple, Triple]): readonly [Triple, Triple, Triple] {
  const [bc, ca, ab] = [crossProduct(b, c), crossProduct(c, a), crossProduct(a, b)];
  const over = 1 / dot(a, bc);
  const [x, y, z] = [times(bc, over), times(ca, over), times(ab, over)];
  return [
    [x[0], y[0], z[0]],
    [x[1], y[1], z[1]],
    [x[2], y[2], z[2]],
  ];
}

/**
 * Moduli of a free thin plate of known mass from three frequencies, and with what power each modulus goes with each measurement at this plate:
 * the derivative of its logarithm with the logarithm of the measurement. Apart from where the modes mix these are near the strip's: 2 for the own frequency,
 * 1 for mass, -3 for thickness, 3 and -1 for the span and the other side; nearer, the other frequency counts too.
 * blank: SI, density = mass/(length width thickness). Source: plateModuli, implicit differentiation.
 */
export function moduliSensitivities(blank: BlankPlate, frequencies: PlateFrequencies): Outcome<ModuliSensitivities> {
  const found = plateModuli(blank, frequencies);
  if (!found.ok) return found;
  const { along, across } = found.value;
  const { long, cross, twist } = thinSlopes()({ ...blank, ...found.value });
  const modes = [long, cross, twist] as const;
  const [solved0, solved1, solved2] = inverse([
    times(long.slope, 1 / long.square),
    times(cross.slope, 1 / cross.square),
    times(twist.slope, 1 / twist.square),
  ]);
  const rates = (of: readonly number[]): Triple => [
    growth(modes[0].parts, of) / modes[0].square,
    growth(modes[1].parts, of) / modes[1].square,
    growth(modes[2].parts, of) / modes[2].square,
  ];
  const byLength = rates(lengthRates);
  const byWidth = rates(widthRates);
  const byPoisson = rates(poissonRates((blank.poisson ** 2 * across) / along));
  const exponentsOf = (row: Triple): ModulusExponents => ({
    mass: row[0] + row[1] + row[2],
    long: 2 * row[0],
    cross: 2 * row[1],
    twist: 2 * row[2],
    length: -dot(row, byLength),
    width: -dot(row, byWidth),
    thickness: -3 * (row[0] + row[1] + row[2]),
    poisson: -dot(row, byPoisson),
  });
  const exponents = { along: exponentsOf(solved0), across: exponentsOf(solved1), shear: exponentsOf(solved2) };
  return succeeded({ ...found.value, exponents });
}
