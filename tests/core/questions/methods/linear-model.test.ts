import { fileURLToPath } from "node:url";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { linearModel } from "../../../../src/core/questions/methods/linear-model.ts";
import { statsCaseResult } from "../../../reference/case-adapter.ts";
import { casesIn } from "../../../reference/load-cases.ts";
import type { StatsCase } from "../../../reference/stats-case.ts";
import { closeTo } from "../../../support/close-to.ts";
import { exactLeastSquares, numberOf, product, ratioOf } from "../../../support/exact-least-squares.ts";
import { law } from "../../../support/law.ts";

type Fields = Readonly<Record<string, unknown>>;
function fitted(inputs: Fields): Readonly<Record<string, readonly number[]>> & Fields {
  const outcome = linearModel.run(inputs);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.refusal));
  return outcome.value as Readonly<Record<string, readonly number[]>> & Fields;
}
const refusalOf = (inputs: Fields) => {
  const outcome = linearModel.run(inputs);
  return outcome.ok ? null : outcome.refusal.code;
};
/** 1, x, x^2 … of decimals as they are written. */
const powersExactly = (x: readonly number[], degree: number, first: number) =>
  x.map((value) => {
    const powers = [ratioOf(1)];
    for (let k = 1; k <= degree; k++) powers.push(product(powers[k - 1]!, ratioOf(value)));
    return powers.slice(first);
  });
const decimals = (most: number, places: number) =>
  fc.integer({ min: -most, max: most }).map((whole) => whole / 10 ** places);

describe("certified sets of the NIST StRD", () => {
  const folder = fileURLToPath(new URL("../../../reference/stats/cases", import.meta.url));
  const sets = (casesIn(folder) as readonly StatsCase[]).filter((one) => one.method === "ols-nist");
  it.each(sets.map((one) => [one.id, one] as const))("%s: 14 of the 15 certified digits", (_, one) => {
    const result = statsCaseResult(one, [linearModel]) ?? {};
    for (const [name, { value }] of Object.entries(one.expected)) {
      const [wanted, got] = [[value].flat() as number[], [result[name]].flat() as number[]];
      for (const [at, want] of wanted.entries()) {
        if (want === 0) expect(got[at]).toBe(0);
        // Half a unit of the fifteenth digit is the certificate's own; F was worked out from the printed ones.
        else closeTo(got[at]!, want, 1e-14);
      }
    }
  });
});

describe("polynomials, against whole numbers of any length", () => {
  law(
    "coefficients and errors keep 14 digits up to degree 8, with a constant wherever x lies",
    [
      fc.uniqueArray(decimals(40, 1), { minLength: 11, maxLength: 20 }),
      fc.integer({ min: 1, max: 8 }),
      fc.constantFrom(0, 100, -1000),
      fc.infiniteStream(decimals(9999, 3)),
      fc.boolean(),
    ],
    (from, degree, offset, stream, constant) => {
      const x = from.map((value) => Number((value + (constant ? offset : 0)).toFixed(1)));
      const y = x.map(() => stream.next().value as number);
      const { coef, se, df_residual: df } = fitted({ x, y, degree, constant });
      const exact = exactLeastSquares(powersExactly(x, degree, constant ? 0 : 1), y.map(ratioOf));
      const scale = numberOf(exact.residualSumOfSquares) / (df as unknown as number);
      for (const [at, value] of exact.coefficients.entries()) {
        const error = Math.sqrt(scale * numberOf(exact.diagonal[at]!));
        closeTo(coef![at]!, numberOf(value), 1e-14, { scale: Math.abs(numberOf(value)) + 1e-3 * error });
        closeTo(se![at]!, error, 1e-13);
      }
    },
    40,
  );

  it("is exact where the records are", () => {
    const x = [1000.1, 1000.2, 1000.4, 1000.7, 1001.1, 1001.3];
    const { coef, se, r2, F } = fitted({ x, y: x.map((value) => Number((value * 10 - 3).toFixed(1))), degree: 3 });
    expect(coef).toEqual([-3, 10, 0, 0].map((value) => expect.closeTo(value, 6)));
    expect(se).toEqual([0, 0, 0, 0]);
    expect(r2).toBe(1);
    expect(F).toBeNull();
  });
});

describe("several quantities", () => {
  law(
    "a quantity in another unit has its coefficient in that unit, and nothing else changes",
    [fc.array(fc.tuple(decimals(500, 1), decimals(500, 1), decimals(500, 1)), { minLength: 8, maxLength: 20 })],
    (rows) => {
      const [x1, x2, y] = [0, 1, 2].map((at) => rows.map((row) => row[at]!)) as [number[], number[], number[]];
      const inputs = { x1, x2, y };
      if (refusalOf(inputs) !== null) return;
      const [one, other] = [fitted(inputs), fitted({ ...inputs, x1: x1.map((value) => value * 1024 + 7) })];
      closeTo(other.coef![1]! * 1024, one.coef![1]!, 1e-12, { scale: Math.abs(one.coef![1]!) + one.se![1]! });
      closeTo(other.coef![2]!, one.coef![2]!, 1e-12, { scale: Math.abs(one.coef![2]!) + one.se![2]! });
      closeTo(other.se![2]!, one.se![2]!, 1e-12, { scale: one.se![2]! + 1e-300 });
    },
  );

  it("says which says the same as the others, and what too few records cannot fix", () => {
    const [x1, y] = [
      [1, 2, 3, 4, 5, 6],
      [1, 3, 2, 5, 4, 6],
    ];
    expect(refusalOf({ x1, x2: x1.map((value) => 3 + 2 * value), y })).toBe("collinear");
    expect(refusalOf({ x1, x2: x1.map(() => 4), y })).toBe("no-spread");
    expect(refusalOf({ x: [1, 1, 2, 2], y: [1, 2, 3, 4], degree: 2 })).toBe("too-few-records");
    expect(refusalOf({ x: [1, 2, Number.POSITIVE_INFINITY], y: [1, 2, 3] })).toBe("not-finite");
    expect(refusalOf({ x: x1, y, degree: 2.5 })).toBe("out-of-domain");
  });

  it("sets a record with a missing value aside and changes nothing else", () => {
    const whole = fitted({ x: [1, 2, 4, 7, 9], y: [2, 3, 3, 8, 9], degree: 2 });
    const more = fitted({ x: [1, 2, Number.NaN, 4, 7, 9], y: [2, 3, 1, 3, 8, 9], degree: 2 });
    expect(more).toEqual({ ...whole, set_aside: 1 });
  });
});
