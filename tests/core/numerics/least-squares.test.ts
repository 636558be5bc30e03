// Expected values: NIST StRD linear sets (tests/reference/stats/cases/nist-lls-*.json): certified digits, the source is inside each.
import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, it } from "vitest";
import { leastSquares } from "../../../src/core/numerics/index.ts";
import { closeTo } from "../../support/close-to.ts";
import { law } from "../../support/law.ts";

type Case = {
  id: string;
  data: Record<string, number[]>;
  options: Record<string, unknown>;
  expected: Record<string, { value: number | number[]; rtol?: number; atol?: number }>;
};
const folder = new URL("../../reference/stats/cases/", import.meta.url);
const cases = readdirSync(folder)
  .filter((name) => name.startsWith("nist-lls-"))
  .map((name) => JSON.parse(readFileSync(new URL(name, folder), "utf8")) as Case);

it.each(cases.map((one) => [one.id, one] as const))(
  "gives the certified coefficients of %s",
  (_, { data, options, expected }) => {
    const y = Float64Array.from(data.y!);
    const degree = Number(/degree (\d+)/.exec(String(options.model))?.[1] ?? 1);
    const origin = /0 \+/.test(String(options.model ?? ""));
    const given = Object.keys(data).filter((name) => name !== "y");
    const columns =
      given.length > 1
        ? given.map((name) => Float64Array.from(data[name]!))
        : Array.from({ length: degree }, (_, k) => Float64Array.from(data[given[0]!]!, (x) => x ** (k + 1)));
    const fit = leastSquares(origin ? columns : [new Float64Array(y.length).fill(1), ...columns], y);
    const { value, rtol, atol } = expected.coef!;
    expect(fit.coefficients.length).toBe((value as number[]).length);
    for (const [at, b] of (value as number[]).entries())
      expect(Math.abs(fit.coefficients[at]! - b)).toBeLessThanOrEqual(Math.max((rtol ?? 0) * Math.abs(b), atol ?? 0));
  },
);

it("names the column that says the same as another, and drops nothing in silence", () => {
  const [one, x] = [Float64Array.of(1, 1, 1, 1), Float64Array.of(1, 2, 3, 4)];
  const fit = leastSquares([one, x, x.map((value) => 2 * value + 3)], Float64Array.of(1, 3, 2, 5));
  expect([fit.rank, fit.dependent.length, Number.isNaN(fit.coefficients[0])]).toEqual([2, 1, true]);
});
const points = fc.array(
  fc.tuple(fc.double({ min: -50, max: 50, noNaN: true }), fc.double({ min: -50, max: 50, noNaN: true })),
  { minLength: 4, maxLength: 30 },
);
law("leverages sum to the rank, and residuals to zero", [points], (pairs) => {
  const x = Float64Array.from(pairs, ([a]) => a);
  const fit = leastSquares(
    [new Float64Array(x.length).fill(1), x],
    Float64Array.from(pairs, ([, b]) => b),
  );
  closeTo(
    fit.leverage.reduce((sum, h) => sum + h, 0),
    fit.rank,
    1e-10,
  );
  if (fit.rank === 2)
    closeTo(
      fit.residuals.reduce((sum, e) => sum + e, 0),
      0,
      1e-10,
      { scale: 50 * x.length },
    );
});
