// Numbers for sentences, rounded by their uncertainty (two significant digits of it). Numbers in JSON never pass here.
import { power as powerOf } from "../base/index.ts";

const HIGH = "⁰¹²³⁴⁵⁶⁷⁸⁹";
const SIGNIFICANT = 4;

/** Power of ten of the first digit after rounding to `digits` significant ones: 0.0996 to two is 0.10, exponent -1. */
const exponentOf = (value: number, digits: number) => Number(value.toExponential(digits - 1).split("e")[1]);

const withMinus = (text: string) => (/^-[0.]*$/.test(text) ? text.slice(1) : text.replace("-", "−"));

/** Fixed-point text with `decimals` digits after the point; below zero it rounds to tens, hundreds … */
const fixed = (value: number, decimals: number): string =>
  withMinus(
    decimals >= 0
      ? value.toFixed(Math.min(decimals, 100))
      : (Math.round(value / powerOf(10, -decimals)) * powerOf(10, -decimals)).toFixed(0),
  );

const raised = (exponent: number) =>
  `10${exponent < 0 ? "⁻" : ""}${[...String(Math.abs(exponent))].map((digit) => HIGH[Number(digit)]).join("")}`;

/** An uncertainty that a maker wrote with one digit (0.02) is repeated with one; any other is given with two. */
function digitsOf(uncertainty: number): number {
  const [mantissa] = uncertainty.toExponential(9).split("e");
  return mantissa !== undefined && /^\d\.0*$/.test(mantissa) ? 1 : 2;
}

/** Texts of value and uncertainty with the same decimals, and the power of ten outside both. */
export function roundedPair(
  value: number,
  uncertainty: number | null,
): { readonly value: string; readonly uncertainty: string | null; readonly power: string } {
  if (uncertainty === null || !(uncertainty > 0)) return { ...roundedAlone(value), uncertainty: null };
  const size = exponentOf(Math.max(Math.abs(value), uncertainty), 6);
  const power = size < -4 || size >= 7 ? size : 0;
  const scale = powerOf(10, power);
  const digits = digitsOf(uncertainty);
  const decimals = digits - 1 - exponentOf(uncertainty / scale, digits);
  return {
    value: fixed(value / scale, decimals),
    uncertainty: fixed(uncertainty / scale, decimals),
    power: power === 0 ? "" : raised(power),
  };
}

function roundedAlone(value: number): { readonly value: string; readonly power: string } {
  if (value === 0) return { value: "0", power: "" };
  const size = exponentOf(value, SIGNIFICANT);
  if (size < -4 || size >= 9)
    return {
      value: withMinus(String(Number((value / powerOf(10, size)).toFixed(SIGNIFICANT - 1)))),
      power: raised(size),
    };
  const text = fixed(value, Math.max(0, SIGNIFICANT - 1 - size));
  return { value: text.includes(".") ? text.replace(/0+$/, "").replace(/\.$/, "") : text, power: "" };
}

/**
 * A number as a sentence gives it. value: finite. uncertainty: standard uncertainty or null; the value is rounded to the place of the second
 * digit of it ("2.314", 0.021 -> "2.314"; 0.21 -> "2.31"); without one, to four significant digits, whole numbers kept whole.
 */
export function numberInWords(value: number, uncertainty: number | null): string {
  const rounded = roundedPair(value, uncertainty);
  return rounded.power === "" ? rounded.value : `${rounded.value} × ${rounded.power}`;
}
