import type { SolvedClass } from "./class-modes.ts";
import { modeDegrees } from "./mode-degrees.ts";
import type { Plate } from "./plate.ts";
import { stiffnessGrowth } from "./plate-stiffness.ts";
import { crossProduct, dot, type Triple } from "./triple.ts";

/** One of the modes: its place among those of its class, its squared angular frequency, the parts of energy in it, its growth with ln E_L, ln E_R and ln G. */
export type ModeSlope = {
  readonly at: number;
  readonly square: number;
  readonly parts: readonly number[];
  readonly slope: Triple;
};
export type PlateSlopes = {
  readonly long: ModeSlope;
  readonly cross: ModeSlope;
  readonly twist: ModeSlope;
  /** Growth of the energy between the long and the cross shape, by which the two turn into each other. */
  readonly between: Triple;
  /** The direction of (ln E_L, ln E_R, ln G) that leaves the twist and the sum of the two bending squares alone: along stiffer, across softer. */
  readonly line: Triple;
};

/** u T v of a square matrix row by row. */
function product(u: Float64Array, matrix: Float64Array, v: Float64Array): number {
  let sum = 0;
  for (let i = 0, at = 0; i < u.length; i++) {
    let row = 0;
    for (let j = 0; j < v.length; j++) row += (matrix[at++] as number) * (v[j] as number);
    sum += (u[i] as number) * row;
  }
  return sum;
}

/** The energies of a class between two of its shapes, each times its weight: for one shape twice their sum is its square. */
const parts = ({ parity, weights }: SolvedClass, u: Float64Array, v: Float64Array): readonly number[] =>
  parity.energies.map((energy, term) => (weights[term] ?? 0) * product(u, energy, v));

/** How parts of energy grow while the shapes stand still (Hellmann and Feynman), rates being those of their weights. */
const growth = (energy: readonly number[], rates: readonly number[]): number =>
  energy.reduce((sum, part, term) => sum + part * (rates[term] ?? 0), 0);

/**
 * The modes that tell the moduli, first bending along (long) and across (cross) of the class even both ways and the twist of the class odd both ways, with
 * derivatives. Where the two bending modes mix into a ring and a cross, long is the one that gains on the other as the plate gets stiffer along and softer
 * across; so the names change over just where the two come closest, and two frequencies with their names mean one plate.
 */
export function plateSlopes(plate: Plate, even: SolvedClass, odd: SolvedClass): PlateSlopes {
  const names = modeDegrees(even.shapes.slice(0, 12), even.parity.degrees);
  const [along, across, shear] = stiffnessGrowth(plate);
  const slope = (energy: readonly number[]): Triple => [
    growth(energy, along),
    growth(energy, across),
    growth(energy, shear),
  ];
  const shapeOf = (solved: SolvedClass, at: number) => solved.shapes[at] ?? new Float64Array(0);
  const modeOf = (solved: SolvedClass, at: number): ModeSlope => {
    const own = parts(solved, shapeOf(solved, at), shapeOf(solved, at));
    return { at, square: solved.squares[at] ?? Number.NaN, parts: own, slope: slope(own) };
  };
  const long = modeOf(
    even,
    names.findIndex(([i, j]) => i === 2 && j === 0),
  );
  const cross = modeOf(
    even,
    names.findIndex(([i, j]) => i === 0 && j === 2),
  );
  const twist = modeOf(odd, 0);
  const between = slope(parts(even, shapeOf(even, long.at), shapeOf(even, cross.at)));
  const [l, c] = [long.slope, cross.slope];
  const line = crossProduct([l[0] + c[0], l[1] + c[1], l[2] + c[2]], twist.slope);
  const isNamedRight = dot(l, line) >= dot(c, line);
  return { long: isNamedRight ? long : cross, cross: isNamedRight ? cross : long, twist, between, line };
}
