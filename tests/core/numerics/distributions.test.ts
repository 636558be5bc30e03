// Expected values: tests/reference/stats/cases/dist-*.json, mpmath at 25 to 40 digits; the source is inside each file.
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, it } from "vitest";
import * as n from "../../../src/core/numerics/index.ts";
import { closeTo } from "../../support/close-to.ts";
import { law } from "../../support/law.ts";

type Table = {
  data: { function: string[]; a: (number | string)[]; b: (number | string)[]; x: number[] };
  expected: { value: { value: number[]; rtol: number } };
};
const functions: Record<string, Record<string, (x: number, a: number, b: number) => number>> = {
  t: { cdf: n.tLowerTail, sf: n.tUpperTail, quantile: n.tQuantile },
  normal: { cdf: n.normalLowerTail, sf: n.normalUpperTail, quantile: n.normalQuantile, logsf: n.normalLogUpperTail },
  f: { cdf: n.fLowerTail, sf: n.fUpperTail, quantile: n.fQuantile },
  chi2: { cdf: n.chiSquareLowerTail, sf: n.chiSquareUpperTail, quantile: n.chiSquareQuantile },
  beta: { cdf: n.betaLowerTail, sf: n.betaUpperTail, quantile: n.betaQuantile },
  binomial: { pmf: n.binomialDensity, cdf: n.binomialLowerTail, sf: n.binomialUpperTail },
  "studentized-range": { sf: n.studentizedRangeUpperTail, quantile: n.studentizedRangeQuantile },
  "noncentral-t": { cdf: n.noncentralTLowerTail, sf: n.noncentralTUpperTail },
};
const relative: Record<string, number> = {
  t: 1e-10,
  normal: 1e-12,
  f: 1e-10,
  chi2: 1e-10,
  beta: 1e-10,
  binomial: 1e-10,
  "studentized-range": 1e-7,
  "noncentral-t": 1e-8,
};

for (const [name, table] of Object.entries(functions)) {
  const read = JSON.parse(
    readFileSync(new URL(`../../reference/stats/cases/dist-${name}.json`, import.meta.url), "utf8"),
  ) as Table;
  it(`gives the tails and quantiles of ${name} as the table does`, () => {
    const { data } = read;
    data.function.forEach((what, i) => {
      const expected = read.expected.value.value[i]!;
      const found = table[what]!(data.x[i]!, Number(data.a[i]), Number(data.b[i]));
      try {
        closeTo(found, expected, relative[name]!, expected === 0 ? { scale: 1e-300 } : {});
      } catch (error) {
        throw new Error(`${name} ${what} a=${data.a[i]} b=${data.b[i]} x=${data.x[i]}: ${(error as Error).message}`);
      }
    });
  });
}

const df = fc.double({ min: 0.6, max: 500, noNaN: true });
law("the two tails of t sum to one", [fc.double({ min: -30, max: 30, noNaN: true }), df], (t, nu) =>
  closeTo(n.tLowerTail(t, nu) + n.tUpperTail(t, nu), 1, 1e-13),
);
law("a t quantile has its probability below it", [fc.double({ min: 1e-9, max: 0.499, noNaN: true }), df], (p, nu) =>
  closeTo(n.tLowerTail(n.tQuantile(p, nu), nu), p, 1e-10),
);
law(
  "an F quantile has its probability below it",
  [fc.double({ min: 0.001, max: 0.999, noNaN: true }), df, df],
  (p, a, b) => closeTo(n.fLowerTail(n.fQuantile(p, a, b), a, b), p, 1e-9),
);
it("gives the tails far out that a subtraction from one loses (R 4.2.2, pt and pf)", () => {
  closeTo(n.tLowerTail(-1e10, 3), 1.1026577908e-30, 1e-8);
  closeTo(n.fUpperTail(80, 3, 40), 5.99e-17, 1e-3);
});
it("gives infinite quantiles at the ends", () =>
  expect([n.tQuantile(0, 3), n.normalQuantile(1)]).toEqual([-Infinity, Infinity]));
