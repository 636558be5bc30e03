import type { LegendreIntegrals } from "./legendre-integrals.ts";

/** Products of polynomials that are even or odd alike along and across: they move by themselves, apart from the other three classes. */
export type ParityClass = {
  /** Degree along the grain and across it of each product. */
  readonly degrees: readonly (readonly [along: number, across: number])[];
  /** Energies of bending along, bending across, their coupling, and twist for stiffness 1, and more where a model has more; square matrices row by row. */
  readonly energies: readonly Float64Array[];
};

/**
 * The bending energy of a plate in products p_i(x) p_j(y) of normalized Legendre polynomials; with them the mass matrix is the unit matrix.
 * integrals: of `count` polynomials; oddAlong, oddAcross: 0 or 1. Energy: w_xx^2, w_yy^2, 2 w_xx w_yy, 4 w_xy^2 integrated, as quadratic forms.
 * Source: Ritz's method, e.g. Leissa, Vibration of Plates (NASA SP-160, 1969), appendix.
 */
export function parityClass(
  { bending, mixed, slope }: LegendreIntegrals,
  count: number,
  oddAlong: number,
  oddAcross: number,
): ParityClass {
  const degrees: (readonly [number, number])[] = [];
  for (let i = oddAlong; i < count; i += 2) for (let j = oddAcross; j < count; j += 2) degrees.push([i, j]);
  const of = (matrix: Float64Array, i: number, j: number) => matrix[i * count + j] as number;
  const square = (energy: (i: number, j: number, k: number, l: number) => number) => {
    const filled = new Float64Array(degrees.length ** 2);
    let at = 0;
    for (const [i, j] of degrees) for (const [k, l] of degrees) filled[at++] = energy(i, j, k, l);
    return filled;
  };
  return {
    degrees,
    energies: [
      square((i, j, k, l) => (j === l ? of(bending, i, k) : 0)),
      square((i, j, k, l) => (i === k ? of(bending, j, l) : 0)),
      square((i, j, k, l) => of(mixed, i, k) * of(mixed, l, j) + of(mixed, k, i) * of(mixed, j, l)),
      square((i, j, k, l) => 4 * of(slope, i, k) * of(slope, j, l)),
    ],
  };
}
