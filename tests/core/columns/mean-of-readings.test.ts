import fc from "fast-check";
import { expect, it } from "vitest";
import { meanOfReadings } from "../../../src/core/columns/index.ts";
import { closeTo } from "../../support/close-to.ts";
import { law } from "../../support/law.ts";

// By hand: 2.30 2.32 2.31 2.35 2.32 mm: mean 2.32, squares .0004 0 .0001 .0009 0 = .0014, / 4 = .00035; JCGM 100:2008, 4.2.2 and 4.2.3
it("five readings: mean, spread and the standard error of the mean", () => {
  const { count, mean, spread, standardError } = meanOfReadings([2.3, 2.32, 2.31, 2.35, 2.32]);
  expect(count).toBe(5);
  closeTo(mean, 2.32, 1e-15);
  closeTo(spread, Math.sqrt(0.00035), 1e-13);
  closeTo(standardError, Math.sqrt(0.00007), 1e-13);
});
// JCGM 100:2008, 4.4.3, table 1: twenty temperatures, mean 100.145, s = 1.489, s of the mean 0.333
it("gives the mean, spread and standard error of the Guide's twenty temperatures", () => {
  const temperatures = [
    96.9, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68, 100.95, 101.11, 101.2,
    101.57, 101.84, 102.36, 102.72,
  ];
  const { mean, spread, standardError } = meanOfReadings(temperatures);
  expect([mean.toFixed(3), spread.toFixed(3), standardError.toFixed(3)]).toEqual(["100.145", "1.489", "0.333"]);
});
it("a missing reading is left out, and one alone has no spread", () => {
  expect(meanOfReadings([Number.NaN, 3, 5])).toMatchObject({ count: 2, mean: 4, standardError: 1 });
  expect(meanOfReadings([Number.NaN, 3])).toEqual({ count: 1, mean: 3, spread: Number.NaN, standardError: 0 });
  expect(meanOfReadings([Number.NaN])).toEqual({ count: 0, mean: Number.NaN, spread: Number.NaN, standardError: 0 });
});
const value = fc.double({ min: -1e3, max: 1e3, noNaN: true });
law("equal readings have their value as mean and no spread", [value, fc.integer({ min: 2, max: 40 })], (x, count) => {
  const { mean, spread, standardError } = meanOfReadings(new Array<number>(count).fill(x));
  expect([mean + 0, spread, standardError]).toEqual([x + 0, 0, 0]);
});
law(
  "the order of the readings does not matter",
  [
    fc
      .array(value, { minLength: 2, maxLength: 9 })
      .chain((all) => fc.tuple(fc.constant(all), fc.shuffledSubarray(all, { minLength: all.length }))),
  ],
  ([all, shuffled]) => expect(meanOfReadings(shuffled)).toEqual(meanOfReadings(all)),
);
