import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  type DoubleDouble,
  decimalValue,
  productOf,
  quotientOf,
  rootOf,
  sumOf,
} from "../../../src/core/numerics/index.ts";
import { law } from "../../support/law.ts";

// Both parts are whole multiples of 2^-200 here, so that they can be held against whole numbers of any length.
const wholeOf = ([hi, lo]: DoubleDouble): bigint =>
  BigInt(hi * 2 ** 100) * 2n ** 100n + BigInt(Math.round(lo * 2 ** 200));
const UNIT = 2n ** 200n;
const sizes = fc.double({ min: 1e-3, max: 1e3, noNaN: true }).map((value) => Number(value.toPrecision(15)));
const numbers = fc.tuple(sizes, sizes).map(([hi, part]): DoubleDouble => sumOf([hi, 0], [part * 2 ** -53, 0]));
const near = (found: bigint, exact: bigint) => {
  const off = found - exact < 0n ? exact - found : found - exact;
  return off * 10n ** 30n <= (exact < 0n ? -exact : exact);
};

describe("numbers of two doubles", () => {
  law("a sum, a product and a quotient keep 30 digits", [numbers, numbers], (a, b) => {
    const [x, y] = [wholeOf(a), wholeOf(b)];
    expect(near(wholeOf(sumOf(a, b)), x + y)).toBe(true);
    expect(near(wholeOf(productOf(a, b)), (x * y) / UNIT)).toBe(true);
    expect(near(wholeOf(quotientOf(a, b)), (x * UNIT) / y)).toBe(true);
  });

  law("a root squared is the number", [numbers], (a) => {
    const root = rootOf(a);
    expect(near(wholeOf(productOf(root, root)), wholeOf(a))).toBe(true);
  });

  it("takes a reading for the decimal that was written", () => {
    expect(decimalValue(0.1)).toEqual([0.1, -5.551115123125783e-18]);
    expect(decimalValue(0.25)).toEqual([0.25, 0]);
    expect(decimalValue(12)).toEqual([12, 0]);
    expect(decimalValue(0.1 + 0.2)).toEqual([0.1 + 0.2, 0]);
  });
});
