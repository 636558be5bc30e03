import { power } from "../../base/index.ts";
import { FREE_BAR_CONSTANT } from "../free-bar-roots.ts";

/** Twist constant of the three-mode formulas: density (f a b/h)^2 times this is G, within 3 % for wood; pi^2/12 is what w = x y gives, a lower bound of G. */
export const TWIST_CONSTANT = 0.9;
export const TWIST_LOWER_CONSTANT = Math.PI ** 2 / 12;

/**
 * Moduli of a plate by strip formulas: E_L = 0.94641 density f_long^2 a^4/h^2, E_R likewise with f_cross and b, G = C density (f_twist a b/h)^2.
 * SI. Good to 1 % for E apart from where the two bending modes mix (8 %). Source: McIntyre and Woodhouse, Acta Metall. 36 (1988) 1397-1416.
 */
export function moduliGuess(
  plate: { readonly length: number; readonly width: number; readonly thickness: number; readonly density: number },
  frequencies: { readonly long: number; readonly cross: number; readonly twist: number },
  twistConstant = TWIST_CONSTANT,
): { readonly along: number; readonly across: number; readonly shear: number } {
  const { length, width, thickness, density } = plate;
  const strip = (frequency: number, span: number) =>
    (FREE_BAR_CONSTANT * density * frequency ** 2 * power(span, 4)) / thickness ** 2;
  return {
    along: strip(frequencies.long, length),
    across: strip(frequencies.cross, width),
    shear: twistConstant * density * ((frequencies.twist * length * width) / thickness) ** 2,
  };
}
