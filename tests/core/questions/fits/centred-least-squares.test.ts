// Least squares far from zero says what it says near it. By hand: x 0, 1, 2, 4 and y 1, 2, 2, 5 have squares 35/4 and products 17/2 about their means,
// so slope 34/35 and residual squares 9 - (17/2)²/(35/4); whole numbers keep these under any offset.
import { describe, expect, it } from "vitest";
import { leastSquaresFields } from "../../../../src/core/questions/fits/least-squares-fields.ts";
import { explainedShare, fitAt, linearFit, ones } from "../../../../src/core/questions/fits/linear-fit.ts";
import { closeTo } from "../../../support/close-to.ts";

const y = Float64Array.of(1, 2, 2, 5);
const SLOPE = 34 / 35;
const VARIANCE = (9 - 8.5 ** 2 / 8.75) / 2;

describe("a line far from zero", () => {
  it.each([0, 1e3, 1e6, -1e9, 1e12])("offset %d", (offset) => {
    const fit = linearFit([ones(4), Float64Array.of(0, 1, 2, 4).map((x) => x + offset)], y);
    closeTo(fit.coefficients[1] ?? Number.NaN, SLOPE, 1e-13);
    closeTo(fit.coefficients[0] ?? Number.NaN, 2.5 - SLOPE * (offset + 1.75), 1e-13);
    closeTo(fit.standardErrors[1] ?? Number.NaN, Math.sqrt(VARIANCE / 8.75), 1e-13);
    closeTo(fit.standardErrors[0] ?? Number.NaN, Math.sqrt(VARIANCE * (0.25 + (offset + 1.75) ** 2 / 8.75)), 1e-13);
    closeTo(explainedShare(fit, y, true).r2, 1 - (2 * VARIANCE) / 9, 1e-13);
    const near = fitAt(linearFit([ones(4), Float64Array.of(0, 1, 2, 4)], y), [1, 3]);
    const far = fitAt(fit, [1, offset + 3]);
    for (const end of ["fit", "meanLow", "meanHigh", "nextLow", "nextHigh"] as const)
      closeTo(far[end], near[end], 1e-12);
  });
  it("a column that says the same as another far from zero is still named", () => {
    const x = Float64Array.of(1e6, 1e6 + 1, 1e6 + 3, 1e6 + 4, 1e6 + 8);
    const fit = linearFit([ones(5), x, x.map((value) => value / 3 + 0.1)], Float64Array.of(1, 2, 2, 5, 4));
    expect(fit.rank).toBe(2);
  });
});

describe("rounding is no scatter", () => {
  const line = (values: Float64Array) => {
    const fit = linearFit([ones(6), Float64Array.of(1, 2, 3, 4, 5, 6)], values);
    return leastSquaresFields(fit, values, true, 0, []);
  };
  it.each([
    ["an exact line", Float64Array.of(1, 2, 3, 4, 5, 6).map((x) => 2 * x)],
    ["one height", ones(6).map(() => 2)],
  ])("%s has no t and no p", (_, values) => {
    expect(line(values)).toMatchObject({ t: [null, null], p: [null, null], F: null, F_p: null });
  });
  it("a large constant with real scatter keeps both", () => {
    expect(line(Float64Array.of(1, 2, 4, 3, 7, 5).map((y) => 1e9 + y / 1000)).p).not.toContain(null);
  });
});
