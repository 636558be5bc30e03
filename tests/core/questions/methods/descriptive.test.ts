import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { groupsInOrder } from "../../../../src/core/questions/inputs/group-columns.ts";
import { anovaNist } from "../../../../src/core/questions/methods/anova-nist.ts";
import { descriptive } from "../../../../src/core/questions/methods/descriptive.ts";
import { closeTo } from "../../../support/close-to.ts";
import { law } from "../../../support/law.ts";

const of = (x: readonly number[], more = {}) => {
  const made = descriptive.run({ x, ...more });
  return made.ok ? (made.value as Readonly<Record<string, number>>) : {};
};

/** Moments of whole numbers in whole numbers: n^j times the j-th central one. */
function exactMoment(x: readonly number[], power: number): number {
  const n = BigInt(x.length);
  const sum = x.reduce((all, value) => all + BigInt(value), 0n);
  const total = x.reduce((all, value) => all + (n * BigInt(value) - sum) ** BigInt(power), 0n);
  return Number(total) / Number(n) ** (power + 1);
}

describe("a column's description", () => {
  law(
    "moments are those of whole-number arithmetic, under a billion's offset too",
    [fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 3, maxLength: 20 }), fc.integer({ min: 0, max: 1e9 })],
    (x, offset) => {
      if (new Set(x).size < 2) return;
      const shifted = of(x.map((value) => value + offset));
      const m2 = exactMoment(x, 2);
      closeTo(shifted.sd_population ?? 0, Math.sqrt(m2), 1e-12);
      closeTo(shifted.skewness_g1 ?? 0, exactMoment(x, 3) / m2 ** 1.5, 1e-11, { scale: 1 });
      closeTo(shifted.excess_kurtosis_g2 ?? 0, exactMoment(x, 4) / m2 ** 2 - 3, 1e-11, { scale: 3 });
    },
  );
  it("the interval of the median has the level it says: 2 of 2^n arrangements of signs fall outside for n = 6", () => {
    closeTo(of([5, 3, 1, 2, 4, 6]).median_ci_level ?? 0, 1 - 2 / 64, 1e-14);
    expect(of([1, 2, 3, 4, 5]).median_ci95_low).toBeNull();
  });
  it("one record has no spread, none is declined, an infinite one is named", () => {
    expect(of([7])).toMatchObject({ mean: 7, sd: null, sem: null, skewness_g1: null, mean_ci95_low: null });
    expect(descriptive.run({ x: [] }).ok).toBe(false);
    expect(descriptive.run({ x: [1, Number.POSITIVE_INFINITY] })).toMatchObject({
      ok: false,
      refusal: { code: "not-finite" },
    });
    expect(descriptive.run({ x: [1e308, -1e308, 1e308] }).ok).toBe(false);
    expect(of([Number.NaN, 2, 4])).toMatchObject({ n: 2, set_aside: 1, mean: 3 });
  });
  it("shares outside 0 to 1 are declined", () =>
    expect(descriptive.run({ x: [1, 2], quantiles_at: [1.2] }).ok).toBe(false));
});

describe("one-way tables", () => {
  it("squares do not change under an offset of 1e12", () => {
    const run = (offset: number) =>
      anovaNist.run({ value: [1, 2, 4, 8, 16, 32].map((v) => v + offset), group: ["a", "a", "b", "b", "c", "c"] });
    expect(run(1e12)).toEqual(run(0));
  });
  it("numbers as labels stand by size, names by letter, and an order that is given goes first", () => {
    expect(groupsInOrder(["10", "9", "2"])).toEqual(["2", "9", "10"]);
    expect(groupsInOrder(["b", "a", "c"], ["c"])).toEqual(["c", "a", "b"]);
  });
});
