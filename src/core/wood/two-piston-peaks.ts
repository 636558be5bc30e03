import { power } from "../base/index.ts";
import { sources } from "./sources.ts";
import { positive, woodMethod } from "./wood-method.ts";

/**
 * Lower peak of top and air coupled: f_-+^2 = {f_A^2 + f_P^2 -+ sqrt[(f_P^2 - f_A^2)^2 + 4 f_AP^4]} / 2.
 * air: rigid-box resonance; plate: top with the hole closed; coupling f_AP; all Hz. sign: -1 the lower peak, +1 the upper. Result: Hz.
 * Needs f_AP^2 < f_A f_P. Source: Christensen and Vistisen (1980).
 */
export const twoPistonPeaks = (air: number, plate: number, coupling: number, sign = -1): number =>
  Math.sqrt((air ** 2 + plate ** 2 + sign * Math.sqrt((plate ** 2 - air ** 2) ** 2 + 4 * power(coupling, 4))) / 2);

export const twoPistonPeaksMethod = woodMethod({
  id: "two-piston-peaks",
  name: "peaks of top and air coupled",
  inputs: {
    air: positive("Hz", "rigid-box air resonance"),
    plate: positive("Hz", "top with the hole closed"),
    coupling: positive("Hz", "coupling frequency"),
  },
  fields: { lower: { meaning: "lower peak", dimension: "Hz" }, upper: { meaning: "upper peak", dimension: "Hz" } },
  source: sources.twoPistons,
  refuses: ({ air, plate, coupling }) =>
    coupling ** 2 < air * plate
      ? null
      : { name: "coupling (coupling frequency)", needed: "its square below the product of the other two" },
  run: ({ air, plate, coupling }) => ({
    lower: twoPistonPeaks(air, plate, coupling),
    upper: twoPistonPeaks(air, plate, coupling, 1),
  }),
});
