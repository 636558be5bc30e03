import type { LegendreIntegrals } from "./legendre-integrals.ts";
import type { ParityClass } from "./parity-class.ts";

type Field = "deflection" | "turnAlong" | "turnAcross";

/** Products of polynomials of one field, in order of their degrees. */
const products = (count: number, oddAlong: number, oddAcross: number, field: Field) => {
  const found: { readonly field: Field; readonly i: number; readonly j: number }[] = [];
  for (let i = oddAlong; i < count; i += 2) for (let j = oddAcross; j < count; j += 2) found.push({ field, i, j });
  return found;
};

/**
 * The energy of a plate that also gives way to shear through its thickness: deflection w and turns u, v of the fibres along and across, each in products of
 * normalized Legendre polynomials, the turns scaled by thickness over sqrt(12) so that the mass matrix with rotary inertia is the unit matrix.
 * Energies, each for stiffness 1: u_x^2, v_y^2, 2 u_x v_y, (u_y + v_x)^2, (w_x - u)^2, (w_y - v)^2. integrals: of `count` polynomials; oddAlong, oddAcross:
 * parity of w. `degrees` holds those of w, and (-1,-1) for the turns. Source: Mindlin, J. Appl. Mech. 18 (1951) 31-38, orthotropic.
 */
export function shearClass(
  { slope, first }: LegendreIntegrals,
  count: number,
  oddAlong: number,
  oddAcross: number,
  { length, width, thickness }: { readonly length: number; readonly width: number; readonly thickness: number },
): ParityClass {
  const basis = [
    ...products(count, oddAlong, oddAcross, "deflection"),
    ...products(count, 1 - oddAlong, oddAcross, "turnAlong"),
    ...products(count, oddAlong, 1 - oddAcross, "turnAcross"),
  ];
  const size = basis.length;
  const energies = Array.from({ length: 6 }, () => new Float64Array(size * size));
  const [x, y, turn] = [2 / length, 2 / width, Math.sqrt(12) / thickness];
  const of = (matrix: Float64Array, i: number, j: number) => matrix[i * count + j] as number;
  const add = (term: number, row: number, column: number, value: number) => {
    const energy = energies[term] as Float64Array;
    energy[row * size + column] = value;
    energy[column * size + row] = value;
  };
  basis.forEach((one, row) => {
    basis.forEach((other, column) => {
      const [sameAlong, sameAcross] = [one.i === other.i, one.j === other.j];
      const pair = `${one.field} ${other.field}`;
      if (pair === "turnAlong turnAlong") {
        if (sameAcross) add(0, row, column, (turn * x) ** 2 * of(slope, one.i, other.i));
        if (sameAlong) add(3, row, column, (turn * y) ** 2 * of(slope, one.j, other.j));
        if (sameAlong && sameAcross) add(4, row, column, turn ** 2);
      } else if (pair === "turnAcross turnAcross") {
        if (sameAlong) add(1, row, column, (turn * y) ** 2 * of(slope, one.j, other.j));
        if (sameAcross) add(3, row, column, (turn * x) ** 2 * of(slope, one.i, other.i));
        if (sameAlong && sameAcross) add(5, row, column, turn ** 2);
      } else if (pair === "turnAlong turnAcross") {
        add(2, row, column, turn ** 2 * x * y * of(first, one.i, other.i) * of(first, other.j, one.j));
        add(3, row, column, turn ** 2 * x * y * of(first, other.i, one.i) * of(first, one.j, other.j));
      } else if (pair === "deflection deflection") {
        if (sameAcross) add(4, row, column, x * x * of(slope, one.i, other.i));
        if (sameAlong) add(5, row, column, y * y * of(slope, one.j, other.j));
      } else if (pair === "deflection turnAlong") {
        if (sameAcross) add(4, row, column, -turn * x * of(first, one.i, other.i));
      } else if (pair === "deflection turnAcross") {
        if (sameAlong) add(5, row, column, -turn * y * of(first, one.j, other.j));
      }
    });
  });
  return { degrees: basis.map(({ field, i, j }) => (field === "deflection" ? [i, j] : [-1, -1])), energies };
}
