/** Largest whole exponent that is multiplied out. */
const MULTIPLIED = 1024;

function wholePower(base: number, exponent: number): number {
  let [result, factor] = [1, base];
  for (let left = Math.abs(exponent); left > 0; left = Math.floor(left / 2)) {
    if (left % 2 === 1) result *= factor;
    factor *= factor;
  }
  return exponent < 0 ? 1 / result : result;
}

/**
 * `base` to the power `exponent`, the same to the last bit in every engine: the language leaves the last bits of its own power, sine and cosine
 * open, and engines differ in them (one power in ten). Whole exponents are multiplied out by squaring; others are the whole part times
 * exp(f ln base), with halves by the square root. Both plain numbers; NaN for a negative base under an exponent that is not whole, as usual.
 * Relative accuracy: about |exponent| × 1e-16, and |ln base| × 1e-16 for the part that is not whole.
 * Source: ECMA-262, Number::exponentiate ("implementation-approximated"); Knuth, The Art of Computer Programming 2, section 4.6.3.
 */
export function power(base: number, exponent: number): number {
  if (Number.isInteger(exponent) && Math.abs(exponent) <= MULTIPLIED) return wholePower(base, exponent);
  if (!(base > 0) || base === Number.POSITIVE_INFINITY || !(Math.abs(exponent) <= MULTIPLIED)) return base ** exponent;
  const whole = Math.floor(exponent);
  const rest = exponent - whole;
  return wholePower(base, whole) * (rest === 0.5 ? Math.sqrt(base) : Math.exp(rest * Math.log(base)));
}
