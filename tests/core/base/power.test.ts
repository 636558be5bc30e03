// Exact powers by arithmetic on whole numbers; the others against roots and logarithms, and against the language's own power to 14 figures.
import fc from "fast-check";
import { expect, it } from "vitest";
import { power } from "../../../src/core/base/index.ts";
import { closeTo } from "../../support/close-to.ts";
import { law } from "../../support/law.ts";

it.each([
  [3, 5, 243],
  [10, 22, 1e22],
  [2, -3, 0.125],
  [-2, 3, -8],
  [7, 0, 1],
  [0, 0, 1],
  [0, -1, Number.POSITIVE_INFINITY],
  [16, 0.25, 2],
  [9, 1.5, 27],
])("%d to the power %d is %d", (base, exponent, expected) => closeTo(power(base, exponent), expected, 1e-15));

it("is nought for nought to a half", () => {
  expect(power(0, 0.5)).toBe(0);
});

it("has no value for a negative number under an exponent that is not whole", () => {
  expect(power(-8, 1 / 3)).toBeNaN();
});

law(
  "it is the language's own power to 13 figures",
  [fc.double({ min: 1e-9, max: 1e9, noNaN: true }), fc.double({ min: -12, max: 12, noNaN: true })],
  (base, exponent) => {
    closeTo(power(base, exponent), base ** exponent, 1e-13);
  },
);
law(
  "whole powers of whole numbers are exact",
  [fc.integer({ min: 1, max: 9 }), fc.integer({ min: 0, max: 15 })],
  (base, exponent) => {
    expect(power(base, exponent)).toBe(Number(BigInt(base) ** BigInt(exponent)));
  },
);
