import { power } from "../base/index.ts";
import { sources } from "./sources.ts";
import { positive, woodMethod } from "./wood-method.ts";

/**
 * From the two peaks and the rigid-box resonance back to the top with the hole closed and the coupling:
 * f_P^2 = f_-^2 + f_+^2 - f_A^2, f_AP^4 = f_A^2 f_P^2 - f_-^2 f_+^2.
 * lower, upper, air: Hz, lower < air < upper. Result: Hz. Source: Christensen and Vistisen (1980).
 */
export function twoPistonInverse(
  lower: number,
  upper: number,
  air: number,
): { readonly plate: number; readonly coupling: number } {
  const plate = Math.sqrt(lower ** 2 + upper ** 2 - air ** 2);
  return { plate, coupling: power((air * plate) ** 2 - (lower * upper) ** 2, 0.25) };
}

export const twoPistonInverseMethod = woodMethod({
  id: "two-piston-inverse",
  name: "top and coupling from the two peaks",
  inputs: {
    lower: positive("Hz", "lower peak"),
    upper: positive("Hz", "upper peak"),
    air: positive("Hz", "rigid-box air resonance"),
  },
  fields: {
    plate: { meaning: "top with the hole closed", dimension: "Hz" },
    coupling: { meaning: "coupling frequency", dimension: "Hz" },
  },
  source: sources.twoPistons,
  refuses: ({ lower, upper, air }) =>
    lower < air && air < upper
      ? null
      : { name: "air (rigid-box air resonance)", needed: "a value between the two peaks" },
  run: ({ lower, upper, air }) => ({ ...twoPistonInverse(lower, upper, air) }),
});
