import { describe, expect, it } from "vitest";
import {
  choleskyFactor,
  covarianceOf,
  coverageFactor,
  effectiveDegreesOfFreedom,
  firstOrderUncertainty,
  gaussLegendreNodes,
  propagatedCovariance,
  secondOrderTerm,
} from "../../../../src/core/numerics/index.ts";
import { closeTo } from "../../../support/close-to.ts";

describe("the examples of the docstrings", () => {
  it("covarianceOf", () =>
    expect(Array.from(covarianceOf([1, 2], [{ first: 0, second: 1, coefficient: 0.5 }]))).toEqual([1, 1, 1, 4]));
  it("choleskyFactor", () => expect(Array.from(choleskyFactor([4, 2, 2, 2]) ?? [])).toEqual([2, 0, 1, 1]));
  it("firstOrderUncertainty", () => expect(firstOrderUncertainty([3, 4], [1, 0, 0, 1]).standard).toBe(5));
  it("propagatedCovariance", () =>
    expect(
      Array.from(
        propagatedCovariance(
          [
            [1, 1],
            [1, -1],
          ],
          [1, 0, 0, 4],
        ),
      ),
    ).toEqual([5, -3, -3, 5]));
  it("secondOrderTerm", () => expect(secondOrderTerm([2], [9])).toEqual({ shift: 9, variance: 162 }));
  it("effectiveDegreesOfFreedom", () => expect(effectiveDegreesOfFreedom([1, 1], [4, 4])).toBe(8));
  it("coverageFactor, as the guide's table G.2 prints it", () => {
    closeTo(coverageFactor(0.95, 16), 2.12, 1e-4);
    closeTo(coverageFactor(0.99, 16), 2.92, 1e-3);
    closeTo(coverageFactor(0.95, Number.POSITIVE_INFINITY), 1.96, 1e-4);
  });
  it("gaussLegendreNodes: exact for x^6 with four nodes", () => {
    const { nodes, weights } = gaussLegendreNodes(4);
    closeTo(
      nodes.reduce((sum, x, i) => sum + (weights[i] ?? 0) * x ** 6, 0),
      2 / 7,
      1e-14,
    );
  });
});
it("a correlation of one is allowed, three that contradict one another are not", () => {
  expect(choleskyFactor([1, 1, 1, 1])).not.toBeNull();
  expect(choleskyFactor([1, 1, -1, 1, 1, 1, -1, 1, 1])).toBeNull();
});
