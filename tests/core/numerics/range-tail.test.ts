// The series of the range's tail against the integral that it stands for, and against a closed form: two means, P(range > w) = 2 P(Z > w / sqrt 2).
import fc from "fast-check";
import { expect, it } from "vitest";
import { rangeUpperTail } from "../../../src/core/numerics/distributions/range-upper-tail.ts";
import { normalUpperTail, rangeTail } from "../../../src/core/numerics/index.ts";
import { closeTo } from "../../support/close-to.ts";
import { law } from "../../support/law.ts";

law(
  "agrees with the integral to 1e-11",
  [fc.integer({ min: 2, max: 40 }), fc.double({ min: 0.01, max: 20, noNaN: true })],
  (means, w) => closeTo(rangeTail(means)(w), rangeUpperTail(w, means), 1e-11),
  60,
);
law("agrees with the closed form of two means", [fc.double({ min: 0.001, max: 14, noNaN: true })], (w) =>
  closeTo(rangeTail(2)(w), 2 * normalUpperTail(w / Math.SQRT2), 1e-11),
);
it("is one at nothing and nothing far out", () => {
  expect(rangeTail(5)(0)).toBe(1);
  expect(rangeTail(5)(1000)).toBe(0);
});
