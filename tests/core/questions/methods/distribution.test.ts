// Laws against closed forms that share no code with them, and against one another.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { distribution } from "../../../../src/core/questions/methods/distribution.ts";
import { closeTo } from "../../../support/close-to.ts";
import { law } from "../../../support/law.ts";

function value(name: string, asked: string, x: number, a?: number, b?: number): number {
  const made = distribution.run({
    distribution: name,
    function: [asked],
    x: [x],
    ...(a === undefined ? {} : { a: [a] }),
    ...(b === undefined ? {} : { b: [b] }),
  });
  expect(made.ok, made.ok ? "" : made.refusal.code).toBe(true);
  return made.ok ? Number((made.value.value as readonly unknown[])[0]) : Number.NaN;
}

/** P(X <= k) of n trials with probability numerator / denominator, in whole numbers. */
function exactBinomial(k: number, n: number, numerator: bigint, denominator: bigint): number {
  let [sum, choose] = [0n, 1n];
  for (let i = 0; i <= k; i++) {
    sum += choose * numerator ** BigInt(i) * (denominator - numerator) ** BigInt(n - i);
    choose = (choose * BigInt(n - i)) / BigInt(i + 1);
  }
  const scale = 10n ** 40n;
  return Number((sum * scale) / denominator ** BigInt(n)) / 1e40;
}

describe("closed forms", () => {
  law("t with 1 and 2 degrees of freedom", [fc.double({ min: 1, max: 300, noNaN: true })], (t) => {
    closeTo(value("t", "sf", t, 1), Math.atan(1 / t) / Math.PI, 1e-13);
    const root = Math.sqrt(t * t + 2);
    closeTo(value("t", "sf", t, 2), 1 / (root * (root + t)), 1e-13);
    closeTo(value("t", "density", t, 1), 1 / (Math.PI * (1 + t * t)), 1e-13);
  });
  law("chi-square and F with 2 degrees of freedom above", [fc.double({ min: 0.01, max: 600, noNaN: true })], (x) => {
    closeTo(value("chi2", "sf", x, 2), Math.exp(-x / 2), 1e-12);
    closeTo(value("chi2", "cdf", x, 2), -Math.expm1(-x / 2), 1e-13);
    closeTo(value("f", "sf", x, 2, 7), (1 + (2 * x) / 7) ** -3.5, 1e-12);
    closeTo(value("f", "density", x, 2, 7), (1 + (2 * x) / 7) ** -4.5, 1e-12);
  });
  law(
    "beta of whole shapes is a sum of binomial terms",
    [fc.integer({ min: 1, max: 30 }), fc.integer({ min: 1, max: 30 }), fc.integer({ min: 1, max: 63 })],
    (a, b, part) => {
      const n = a + b - 1;
      const expected = exactBinomial(b - 1, n, BigInt(64 - part), 64n);
      if (expected > 1e-20) closeTo(value("beta", "cdf", part / 64, a, b), expected, 1e-12);
      const lower = exactBinomial(a - 1, n, BigInt(part), 64n);
      if (lower > 1e-20) closeTo(value("binomial", "cdf", a - 1, n, part / 64), lower, 1e-12);
    },
  );
  it("the studentized range of two means is sqrt 2 times the size of t", () => {
    for (const df of [3, 10, 57])
      for (const q of [0.5, 2, 6]) {
        closeTo(value("studentized_range", "sf", q, 2, df), 2 * value("t", "sf", q / Math.SQRT2, df), 1e-9);
        closeTo(value("studentized_range", "cdf", q, 2, df), 1 - 2 * value("t", "sf", q / Math.SQRT2, df), 1e-9);
      }
  });
});

describe("far tails", () => {
  it("quantiles of 1e-300 keep their digits", () => {
    closeTo(value("t", "isf", 1e-300, 1), 1e300 / Math.PI, 1e-12);
    closeTo(value("t", "sf", 1e200, 1), 1e-200 / Math.PI, 1e-12);
    closeTo(value("chi2", "isf", 1e-300, 2), 600 * Math.LN10, 1e-13);
    closeTo(value("f", "isf", 1e-300, 2, 7), 3.5 * Math.expm1((300 * Math.LN10) / 3.5), 1e-11);
    closeTo(value("normal", "sf", value("normal", "isf", 1e-300)), 1e-300, 1e-11);
    closeTo(value("beta", "quantile", 1e-100, 1, 3), 1e-100 / 3, 1e-12);
  });
  it.each([
    ["cdf", 2, 60, 21.726, 0.0005020829826699228],
    ["sf", 5, 30, 43.18, 0.2111704995144178],
    ["cdf", 30, 130, 100, 0.010643766357822966],
    ["cdf", 5, 11, 10, 0.3106574919220477],
    ["sf", 8, -15, -12, 0.14184378153979657],
    ["cdf", 3, 700, 500, 0.11759908277237047],
    ["sf", 190, 11, 14, 0.007535189412305222],
  ] as const)(
    "the noncentral t far from zero, %s with df %d and noncentrality %d (mpmath 1.3, 30 digits)",
    (what, a, b, x, wanted) => {
      closeTo(value("noncentral_t", what, x, a, b), wanted, 1e-12);
      const slope =
        (value("noncentral_t", "cdf", x + 1e-4, a, b) - value("noncentral_t", "cdf", x - 1e-4, a, b)) / 2e-4;
      closeTo(value("noncentral_t", "density", x, a, b), slope, 1e-6);
    },
  );
  it("the noncentral t keeps its digits in a tail of 1e-13 (mpmath 1.3, 25 digits, by its defining integral)", () => {
    closeTo(value("noncentral_t", "sf", 30, 20, 3), 1.813648333559135e-13, 1e-9);
    closeTo(value("noncentral_t", "sf", 12, 5, 2), 0.001449687177823024, 1e-10);
    closeTo(value("noncentral_t", "cdf", -5, 5, 2), 7.030610506244314e-6, 1e-10);
  });
  it("an infinite value is said by name, and a share outside 0 to 1 is declined", () => {
    const made = distribution.run({ distribution: "normal", function: ["quantile"], x: [1] });
    expect(made.ok && made.value.value).toEqual(["Infinity"]);
    expect(distribution.run({ distribution: "t", function: ["quantile"], x: [1.5], a: [3] }).ok).toBe(false);
    expect(distribution.run({ distribution: "t", function: ["sf"], x: [1.5], a: [-3] }).ok).toBe(false);
  });
});

const shapes = [
  fc.double({ min: 0.3, max: 80, noNaN: true }),
  fc.double({ min: 0.3, max: 80, noNaN: true }),
  fc.double({ min: 0.001, max: 0.999, noNaN: true }),
] as const;
describe("laws of the laws", () => {
  law(
    "cdf and sf add up to one, quantiles invert both",
    [...shapes],
    (a, b, p) => {
      for (const name of ["t", "f", "chi2", "beta", "normal"]) {
        const x = value(name, "quantile", p, name === "normal" ? 0 : a, name === "normal" ? 1 : b);
        const at = (asked: string, where: number) =>
          value(name, asked, where, name === "normal" ? 0 : a, name === "normal" ? 1 : b);
        expect(Math.abs(at("cdf", x) + at("sf", x) - 1)).toBeLessThan(2e-15);
        if (name !== "beta" || x < 0.999) closeTo(at("cdf", x), p, 1e-10);
        if (name !== "beta" || at("isf", p) < 0.999) closeTo(at("sf", at("isf", p)), p, 1e-9);
      }
    },
    60,
  );
  law(
    "the noncentral t's quantile inverts its tails",
    [fc.double({ min: 1, max: 60, noNaN: true }), fc.double({ min: -4, max: 4, noNaN: true }), shapes[2]],
    (df, ncp, p) => {
      closeTo(value("noncentral_t", "cdf", value("noncentral_t", "quantile", p, df, ncp), df, ncp), p, 1e-10);
    },
    40,
  );
});
