// Numbers of about 31 digits as unevaluated sums of two doubles, hi + lo with |lo| at most half a unit of the last place of hi.
// Source: T. J. Dekker (1971), Numer. Math. 18, 224-242; Y. Hida, X. S. Li, D. H. Bailey (2001), 15th IEEE Symposium on Computer Arithmetic, 155-162.

export type DoubleDouble = readonly [hi: number, lo: number];

const SPLITTER = 2 ** 27 + 1;

/** What rounding loses in a * b, exactly; |a|, |b| below 1e300 and the product not near underflow. */
export function lostInProduct(a: number, b: number, product: number): number {
  const [wideA, wideB] = [SPLITTER * a, SPLITTER * b];
  const [highA, highB] = [wideA - (wideA - a), wideB - (wideB - b)];
  const [lowA, lowB] = [a - highA, b - highB];
  return highA * highB - product + highA * lowB + lowA * highB + lowA * lowB;
}

/** Sum of two doubles and what rounding loses in it. */
export function exactSum(a: number, b: number): DoubleDouble {
  const sum = a + b;
  const part = sum - a;
  return [sum, a - (sum - part) + (b - part)];
}

/** a + b, relative 1e-31 of the larger. */
export function sumOf(a: DoubleDouble, b: DoubleDouble): DoubleDouble {
  const [high, lostHigh] = exactSum(a[0], b[0]);
  const [low, lostLow] = exactSum(a[1], b[1]);
  const [hi, lo] = exactSum(high, lostHigh + low);
  return exactSum(hi, lo + lostLow);
}

/** a b, relative 1e-31. */
export function productOf(a: DoubleDouble, b: DoubleDouble): DoubleDouble {
  const product = a[0] * b[0];
  return exactSum(product, lostInProduct(a[0], b[0], product) + (a[0] * b[1] + a[1] * b[0]));
}

export const negative = (a: DoubleDouble): DoubleDouble => [-a[0], -a[1]];

/** a / b, relative 1e-31, by long division with two corrections; b not zero. */
export function quotientOf(a: DoubleDouble, b: DoubleDouble): DoubleDouble {
  const first = a[0] / b[0];
  const rest = sumOf(a, negative(productOf([first, 0], b)));
  const second = rest[0] / b[0];
  const last = sumOf(rest, negative(productOf([second, 0], b)));
  return sumOf(exactSum(first, second), [last[0] / b[0], 0]);
}

/** Square root, relative 1e-31, by one Newton step from that of the double; a >= 0. */
export function rootOf(a: DoubleDouble): DoubleDouble {
  if (!(a[0] > 0)) return [0, 0];
  const near = Math.sqrt(a[0]);
  const rest = sumOf(a, negative(productOf([near, 0], [near, 0])));
  return sumOf([near, 0], [rest[0] / (2 * near), 0]);
}
