import type { Caution } from "../../base/index.ts";

/** Two bending frequencies within 25 % of each other mix, by the convention of this set. */
export const isMixed = (long: number, cross: number): boolean => Math.max(long, cross) < 1.25 * Math.min(long, cross);

/** The ratio of the third bending frequency of a free bar to its first: beyond it (4,0) lies below (0,2). */
const SECOND_EVEN = 5.4039;
const hertz = (frequency: number) => `${Number(frequency.toPrecision(4))} Hz`;

/** What to know of the first bending along and across: strip frequencies that mix, or a cross bending that is not the second even mode. */
export function mixingCautions(long: number, cross: number): readonly Caution[] {
  if (isMixed(long, cross)) return [{ code: "modes-mixed", facts: { along: hertz(long), across: hertz(cross) } }];
  if (cross > SECOND_EVEN * long) return [{ code: "cross-not-second", facts: { ratio: (cross / long).toFixed(1) } }];
  return [];
}
