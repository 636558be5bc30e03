// Expected values: tests/reference/stats/cases/descriptive-*.json (R 4.2.2); the source is inside each.
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, it } from "vitest";
import {
  bracketedRoot,
  compensatedSum,
  generatorFromSeed,
  mean,
  median,
  midranks,
  quantile,
  standardDeviation,
} from "../../../src/core/numerics/index.ts";
import { closeTo } from "../../support/close-to.ts";
import { law } from "../../support/law.ts";

for (const name of ["tops15", "offset", "negative"])
  it(`gives mean, spread and median of ${name} as R does`, () => {
    const { data, expected } = JSON.parse(
      readFileSync(new URL(`../../reference/stats/cases/descriptive-${name}.json`, import.meta.url), "utf8"),
    ) as { data: { x: number[] }; expected: Record<string, { value: number }> };
    closeTo(mean(data.x), expected.mean!.value, 1e-12);
    closeTo(standardDeviation(data.x), expected.sd!.value, 1e-9);
    closeTo(median(data.x), expected.median!.value, 1e-12);
  });
it("loses nothing in a sum that cancels (exact arithmetic)", () => expect(compensatedSum([1e16, 1, -1e16])).toBe(1));
it("interpolates quantiles of type 7 (Hyndman and Fan 1996)", () => expect(quantile([4, 1, 3, 2], 0.25)).toBe(1.75));
it("shares ranks among ties", () => expect([...midranks([10, 30, 10])]).toEqual([1.5, 3, 1.5]));
it("finds the root of x^3 = 2", () =>
  closeTo(
    bracketedRoot((x) => x ** 3 - 2, 0, 2),
    2 ** (1 / 3),
    1e-15,
  ));

const seed = fc.integer();
law("a stream comes back from its seed, and stays within [0, 1)", [seed], (from) => {
  const [one, other] = [generatorFromSeed(from), generatorFromSeed(from)];
  for (let i = 0; i < 20; i++) {
    const value = one.next();
    expect(value >= 0 && value < 1 && value === other.next()).toBe(true);
  }
});
law("a split stream does not depend on what was drawn before, and differs by name", [seed], (from) => {
  const [drawn, fresh] = [generatorFromSeed(from), generatorFromSeed(from)];
  drawn.next();
  const value = drawn.split("bootstrap").next();
  expect(fresh.split("bootstrap").next()).toBe(value);
  expect(fresh.split("permutation").next()).not.toBe(value);
});
it("spreads evenly: chi-square of 100 cells over 100,000 draws stays below its 1 in 10,000 point (R qchisq(0.9999, 99) = 161.3187)", () => {
  const cells = new Float64Array(100);
  const stream = generatorFromSeed(7).split("evenness");
  for (let i = 0; i < 100_000; i++) {
    const at = Math.floor(stream.next() * 100);
    cells[at] = cells[at]! + 1;
  }
  expect(cells.reduce((sum, count) => sum + (count - 1000) ** 2 / 1000, 0)).toBeLessThan(161.32);
});
