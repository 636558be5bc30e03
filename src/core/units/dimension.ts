/** A rational exponent, in lowest terms, denominator > 0: the square root of an area is a length, exactly. */
export type Rational = readonly [numerator: number, denominator: number];

/**
 * Exponents of the base quantities. What is absent is zero. `angle`, `cents`, `moisture` (percent of oven-dry mass) and `level` (dB)
 * are kinds of their own although their SI exponents are all zero: adding radians to percent is a mistake.
 */
export type Dimension = Readonly<
  Partial<Record<"length" | "mass" | "time" | "temperature" | "angle" | "cents" | "moisture" | "level", Rational>>
>;

/** The base quantities, in the order in which they are written. */
export const baseQuantities = [
  "mass",
  "length",
  "time",
  "temperature",
  "angle",
  "cents",
  "moisture",
  "level",
] as const satisfies readonly (keyof Dimension)[];

/** No base quantity at all: a plain number. */
export const dimensionless: Dimension = Object.freeze({});

const divisor = (a: number, b: number): number => (b === 0 ? Math.abs(a) : divisor(b, a % b));

/** The fraction numerator / denominator in lowest terms, denominator > 0. denominator: not 0. Both whole numbers. */
export function rational(numerator: number, denominator = 1): Rational {
  const common = divisor(numerator, denominator) * Math.sign(denominator);
  return [numerator === 0 ? 0 : numerator / common, denominator / common];
}

const combined = (a: Dimension, b: Dimension, sign: 1 | -1): Dimension => {
  const result: Partial<Record<keyof Dimension, Rational>> = {};
  for (const quantity of baseQuantities) {
    const [n, d] = a[quantity] ?? [0, 1];
    const [m, e] = b[quantity] ?? [0, 1];
    const sum = rational(n * e + sign * m * d, d * e);
    if (sum[0] !== 0) result[quantity] = sum;
  }
  return result;
};

/** Dimension of a product: exponents add. */
export const multiplyDimensions = (a: Dimension, b: Dimension): Dimension => combined(a, b, 1);

/** Dimension of a quotient: exponents subtract. */
export const divideDimensions = (a: Dimension, b: Dimension): Dimension => combined(a, b, -1);

/** Dimension of a power: each exponent times the rational `power`; raising to [1, 2] is the square root. */
export function raiseDimension(dimension: Dimension, power: Rational): Dimension {
  const result: Partial<Record<keyof Dimension, Rational>> = {};
  for (const quantity of baseQuantities) {
    const exponent = dimension[quantity];
    if (exponent && power[0] !== 0) result[quantity] = rational(exponent[0] * power[0], exponent[1] * power[1]);
  }
  return result;
}

/** Whether two dimensions are equal, exponent by exponent. */
export const sameDimension = (a: Dimension, b: Dimension): boolean =>
  baseQuantities.every((quantity) => {
    const [n, d] = a[quantity] ?? [0, 1];
    const [m, e] = b[quantity] ?? [0, 1];
    return n * e === m * d;
  });

/** Whether it is a plain number: no base quantity has an exponent. */
export const isDimensionless = (dimension: Dimension): boolean => sameDimension(dimension, dimensionless);
