import type { PlateSlopes } from "./plate-slopes.ts";
import { crossProduct, dot, sumOf, type Triple, times } from "./triple.ts";

/** The three squared angular frequencies that tell the three moduli. */
export type PlateSquares = { readonly long: number; readonly cross: number; readonly twist: number };

export type ModuliStep = {
  /** By what share to change E_L, E_R and G. */
  readonly change: Triple;
  /** Whether a plate can have these two bending frequencies, as seen from here. */
  readonly isReachable: boolean;
};

/**
 * Newton's step of the moduli towards three wanted frequencies, good also where the two bending modes mix. They are taken as two levels that turn into each
 * other: their sum and the twist are linear in the step, which leaves a line of steps; on it the square of their difference is a quadratic, solved exactly on
 * the side that the names say. Source: degenerate perturbation, e.g. Courant and Hilbert, Methods of Mathematical Physics I (1953), chapter V, section 13.
 */
export function moduliStep({ long, cross, twist, between, line }: PlateSlopes, wanted: PlateSquares): ModuliStep {
  const sum = sumOf(long.slope, cross.slope);
  const apart = sumOf(long.slope, times(cross.slope, -1));
  const size = dot(line, line);
  const start = sumOf(
    times(crossProduct(twist.slope, line), (wanted.long + wanted.cross - long.square - cross.square) / size),
    times(crossProduct(line, sum), (wanted.twist - twist.square) / size),
  );
  const [difference, differenceRate] = [long.square - cross.square + dot(apart, start), dot(apart, line)];
  const [mixing, mixingRate] = [2 * dot(between, start), 2 * dot(between, line)];
  const a = differenceRate ** 2 + mixingRate ** 2;
  const b = difference * differenceRate + mixing * mixingRate;
  const c = difference ** 2 + mixing ** 2 - (wanted.long - wanted.cross) ** 2;
  const inner = b * b - a * c;
  const root = Math.sqrt(Math.max(0, inner)) * (wanted.long < wanted.cross ? -1 : 1);
  return { change: sumOf(start, times(line, (root - b) / a)), isReachable: inner >= 0 };
}
