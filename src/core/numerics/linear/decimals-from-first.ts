import { decimalValue } from "./decimal-value.ts";
import { negative, sumOf } from "./double-double.ts";

/**
 * Readings less the first of them, as the decimals that they were written as: a common offset costs no digit, not even those that reading it as a
 * double has lost. values: finite; the first gives 0.
 * @example decimalsFromFirst(Float64Array.of(1e12 + 0.4, 1e12 + 0.3)) // 0 and -0.1
 */
export function decimalsFromFirst(values: Float64Array): Float64Array {
  const origin = negative(decimalValue(values[0] ?? 0));
  return values.map((value) => sumOf(decimalValue(value), origin)[0]);
}
