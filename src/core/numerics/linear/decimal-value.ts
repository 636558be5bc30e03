import { type DoubleDouble, productOf, quotientOf } from "./double-double.ts";

/**
 * The decimal that a double stands for: the shortest that reads as it, to 31 digits. A reading written 0.1 is a tenth, not the double nearest to it.
 * value: finite. One of more than 15 digits, or outside 1e-22 to 1e22, was computed and stands for itself.
 * @example decimalValue(0.1) // 0.1 and -5.551115123125783e-18
 */
export function decimalValue(value: number): DoubleDouble {
  if (Number.isInteger(value)) return [value, 0];
  const [digits = "", power = "0"] = value.toExponential().split("e");
  const [whole = "", fraction = ""] = digits.split(".");
  const exponent = Number(power) - fraction.length;
  if (fraction.length > 14 || Math.abs(exponent) > 22) return [value, 0];
  const scaled: DoubleDouble = [Number(whole + fraction), 0];
  const power10: DoubleDouble = [10 ** Math.abs(exponent), 0];
  return exponent < 0 ? quotientOf(scaled, power10) : productOf(scaled, power10);
}
