/** A rational exponent, in lowest terms, denominator > 0: the square root of an area is a length, exactly. */
export type Rational = readonly [numerator: number, denominator: number];

/**
 * Exponents of the base quantities. What is absent is zero. `angle`, `cents`, `moisture` (percent of oven-dry mass) and `level` (dB)
 * are kinds of their own although their SI exponents are all zero: adding radians to percent is a mistake.
 */
export type Dimension = Readonly<Partial<Record<"length" | "mass" | "time" | "temperature" | "angle" | "cents" | "moisture" | "level", Rational>>>;
