import fc from "fast-check";
import { expect, it } from "vitest";
import { bracketedMinimum } from "../../../src/core/numerics/index.ts";
import { law } from "../../support/law.ts";

it("finds the minimum of its example", () => {
  const { at, value, converged } = bracketedMinimum((x) => (x - 2) ** 2, 0, 5);
  expect(Math.abs(at - 2)).toBeLessThan(1e-7);
  expect(value).toBeLessThan(1e-14);
  expect(converged).toBe(true);
});

it("goes to the end where the function only falls or only rises", () => {
  expect(bracketedMinimum((x) => x, 0, 1).at).toBeLessThan(1e-9);
  expect(bracketedMinimum((x) => -x, 0, 1).at).toBeGreaterThan(1 - 1e-9);
});

it("says that it did not get there where no place is narrow enough", () => {
  expect(bracketedMinimum((x) => x * x, -1, 2, 0).converged).toBe(false);
});

law(
  "a valley that is no parabola is found wherever it lies",
  [fc.double({ min: -3, max: 3, noNaN: true })],
  (place) => {
    const { at } = bracketedMinimum((x) => Math.exp(x - place) - (x - place), -4, 5);
    expect(Math.abs(at - place)).toBeLessThan(1e-6);
  },
);
