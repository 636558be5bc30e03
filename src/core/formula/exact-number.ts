// Numbers of the text as exact fractions, for exponents: x^(1/3), x^0.5.
import type { Rational } from "../units/index.ts";
import { rational } from "../units/index.ts";

const LARGEST = 1000;

/** The fraction with the smallest denominator up to 1000 that is this number to the last bit; undefined if there is none. */
export function exactNumber(value: number): Rational | undefined {
  if (!Number.isFinite(value) || Math.abs(value) > LARGEST) return undefined;
  for (let denominator = 1; denominator <= LARGEST; denominator++) {
    const numerator = Math.round(value * denominator);
    if (numerator / denominator === value) return rational(numerator, denominator);
  }
  return undefined;
}

/** a (operator) b as a fraction; undefined where it is none of + - * / or grows out of bounds. */
export function exactResult(operator: string, [n, d]: Rational, [m, e]: Rational): Rational | undefined {
  const made =
    operator === "+"
      ? rational(n * e + m * d, d * e)
      : operator === "-"
        ? rational(n * e - m * d, d * e)
        : operator === "*"
          ? rational(n * m, d * e)
          : operator === "/" && m !== 0
            ? rational(n * e, d * m)
            : undefined;
  return made && Math.abs(made[0]) <= LARGEST && made[1] <= LARGEST ? made : undefined;
}
