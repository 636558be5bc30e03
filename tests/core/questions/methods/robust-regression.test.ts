// Robust regression: the equations that the estimates solve, equivariance, and what wild records do. Figures of R stand in the reference cases.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { everySubset, generatorFromSeed, leastSquares } from "../../../../src/core/numerics/index.ts";
import { robustRegression } from "../../../../src/core/questions/methods/robust-regression.ts";
import { bisquare, consistentTuning } from "../../../../src/core/questions/robust/bisquare.ts";
import { sFit, sScale } from "../../../../src/core/questions/robust/s-fit.ts";
import { closeTo } from "../../../support/close-to.ts";
import { fieldsOf } from "../../../support/fields-of.ts";
import { law } from "../../../support/law.ts";

type Fields = { readonly [field: string]: readonly number[] } & {
  readonly huber_scale: number;
  readonly mm_scale: number;
  readonly left_out: number;
};
const run = (inputs: Readonly<Record<string, unknown>>) => fieldsOf(robustRegression, inputs) as unknown as Fields;
const refused = (inputs: Readonly<Record<string, unknown>>) => {
  const outcome = robustRegression.run(inputs);
  return outcome.ok ? "answered" : outcome.refusal.code;
};

/** Records on y = 2 + 3 x1 - x2 with a scatter, every `wild`th one thrown far off. */
function records(n: number, wild: number, seed: number) {
  const generator = generatorFromSeed(seed);
  const draw = () => generator.next() + generator.next() + generator.next() - 1.5;
  const [x1, x2] = [
    Float64Array.from({ length: n }, () => 4 * draw()),
    Float64Array.from({ length: n }, () => 20 + draw()),
  ];
  const y = x1.map((v, i) => 2 + 3 * v - (x2[i] as number) + 0.3 * draw() + (i % wild === 0 ? 30 + 10 * draw() : 0));
  return { y, x1, x2 };
}
const design = ({ y, x1, x2 }: ReturnType<typeof records>) => [y.map(() => 1), x1, x2];
const residualsOf = (given: ReturnType<typeof records>, b: readonly number[]) =>
  given.y.map(
    (v, i) =>
      v - (b[0] as number) - (b[1] as number) * (given.x1[i] as number) - (b[2] as number) * (given.x2[i] as number),
  );

describe("the estimates", () => {
  const given = records(40, 6, 3);
  const found = run(given);
  it.each(["huber", "mm"])("%s: weighted residuals are at right angles to every column", (name) => {
    const r = residualsOf(given, found[`${name}_coef`] as readonly number[]);
    for (const column of design(given)) {
      const terms = column.map((v, i) => v * (r[i] as number) * (found[`${name}_weights`]?.[i] as number));
      closeTo(
        terms.reduce((a, b) => a + b, 0),
        0,
        1e-11,
        { scale: terms.reduce((a, b) => a + Math.abs(b), 0) },
      );
    }
  });
  it("Huber's scale is the median size over 0.6745, its weights are k scales over the size", () => {
    const sizes = [...residualsOf(given, found.huber_coef as readonly number[])].map(Math.abs);
    const middle = [...sizes].sort((a, b) => a - b);
    closeTo(found.huber_scale, ((middle[19] as number) + (middle[20] as number)) / 2 / 0.6745, 1e-11);
    for (const [i, size] of sizes.entries())
      closeTo(found.huber_weights?.[i] as number, Math.min(1, (1.345 * found.huber_scale) / size), 1e-10);
  });
  it("no plane through three records, nor one moved a little, has a smaller S-scale", () => {
    const [X, tuning] = [design(given), { c: 1.54764, breakdown: 0.5 }];
    const best = sFit(X, given.y, tuning);
    const sizes = best?.residuals ?? new Float64Array();
    const sum = sizes.reduce((total, r) => total + bisquare.rho(r / (1.54764 * (best?.scale ?? 1))), 0);
    closeTo(sum / (40 - 3), 0.5, 1e-12);
    let least = Number.POSITIVE_INFINITY;
    everySubset(40, 3, (chosen) => {
      const at = (column: Float64Array) => Float64Array.from(chosen, (i) => column[i] as number);
      const { coefficients } = leastSquares(X.map(at), at(given.y));
      least = Math.min(least, sScale(residualsOf(given, [...coefficients]), 3, tuning));
    });
    expect(best?.scale).toBeLessThan(least);
    const moved = [0, 1, 2].flatMap((j) =>
      [-1e-3, 1e-3].map((by) => {
        const b = [...(best?.coefficients ?? [])].map((v, k) => v + (k === j ? by : 0));
        return sScale(residualsOf(given, b), 3, tuning);
      }),
    );
    expect(Math.min(...moved)).toBeGreaterThan(best?.scale ?? Number.POSITIVE_INFINITY);
  });
  it("a scale of half breakdown is that of normal data at 1.5476 (Rousseeuw and Yohai 1984)", () => {
    closeTo(consistentTuning(0.5), 1.547645, 1e-6);
    closeTo(consistentTuning(0.25), 2.937, 2e-4);
  });
});

describe("laws", () => {
  law(
    "a plane added to y adds to the planes; y and x in other units turn them",
    [fc.integer({ min: 1, max: 50 }), fc.double({ min: -5, max: 5, noNaN: true }), fc.constantFrom(0.01, 25.4, 1e4)],
    (seed, slope, factor) => {
      const given = records(24, 5, seed);
      const plain = run(given);
      const turned = run({
        y: given.y.map((v, i) => factor * (v + 7 + slope * (given.x1[i] as number))),
        x1: given.x1,
        x2: given.x2.map((v) => v / factor),
      });
      for (const name of ["huber", "mm"]) {
        const [b0, b1, b2] = plain[`${name}_coef`] as [number, number, number];
        const want = [factor * (b0 + 7), factor * (b1 + slope), factor * factor * b2];
        for (const [j, value] of want.entries())
          closeTo((turned[`${name}_coef`] as readonly number[])[j] as number, value, 1e-7, {
            scale: Math.max(...want.map(Math.abs)) / factor ** (2 - j),
          });
        closeTo(
          turned[`${name}_scale`] as unknown as number,
          factor * (plain[`${name}_scale`] as unknown as number),
          1e-7,
        );
      }
    },
    12,
  );
});

describe("units and places", () => {
  const { x1, x2, y } = records(24, 5, 8);
  const plain = run({ x1, x2, y });
  it("readings a thousand million off keep the slopes and their errors, and so do ones of 1e200", () => {
    const far = run({ x1: x1.map((v) => v + 1e9), x2, y: y.map((v) => v - 1e9) });
    const large = run({ x1: x1.map((v) => v * 1e200), x2: x2.map((v) => v * 1e200), y: y.map((v) => v * 1e200) });
    for (const name of ["huber", "mm"])
      for (const j of [1, 2])
        for (const field of ["coef", "se"]) {
          const want = plain[`${name}_${field}`]?.[j] as number;
          closeTo(far[`${name}_${field}`]?.[j] as number, want, 1e-5);
          closeTo(large[`${name}_${field}`]?.[j] as number, want, 1e-7);
        }
  });
  it("the order of the records says nothing, even of 600 of which some are drawn", () => {
    const many = records(600, 4, 2);
    const back = run({ y: [...many.y].reverse(), x1: [...many.x1].reverse(), x2: [...many.x2].reverse() });
    const found = run(many);
    for (const name of ["huber_coef", "mm_coef", "mm_se"])
      for (const [j, value] of (found[name] as readonly number[]).entries())
        closeTo(back[name]?.[j] as number, value, 1e-9);
  });
  it("two lines through half of the records each are both given, and said", () => {
    const half = Array.from({ length: 12 }, (_, i) => ({ at: i + 1, up: 2 * (i + 1) + ((i * 7) % 5) / 10 }));
    const [x, y] = [
      [...half, ...half].map(({ at }) => at),
      half.flatMap(({ up }) => up).concat(half.map(({ up }) => -up)),
    ];
    const found = run({ x, y }) as unknown as { mm_coef: number[]; rival_coef: number[] };
    expect(Math.abs(found.mm_coef[1]!)).toBeGreaterThan(1.5);
    expect(Math.sign(found.rival_coef[1]!)).toBe(-Math.sign(found.mm_coef[1]!));
    closeTo(Math.abs(found.rival_coef[1]!), Math.abs(found.mm_coef[1]!), 0.1);
    const [caution] = robustRegression.cautions?.({ x, y }, found as never) ?? [];
    expect(caution?.code).toBe("another-line-as-good");
    const { y: plain, x1, x2 } = records(40, 6, 3);
    expect(run({ y: plain, x1, x2 })).toMatchObject({ rival_coef: null });
  });
  it("nor does it where two lines are as good as each other", () => {
    const half = Array.from({ length: 12 }, (_, i) => ({ x: i + 1, y: 2 * (i + 1) + ((i * 7) % 5) / 10 }));
    const both = [...half, ...half.map(({ x, y }) => ({ x, y: -y }))];
    const slope = (list: typeof both) => run({ x: list.map(({ x }) => x), y: list.map(({ y }) => y) }).mm_coef?.[1];
    closeTo(slope([...both].reverse()) as number, slope(both) as number, 1e-9);
  });
  it("a record without y is set aside", () => {
    const more = run({ x1: [...x1, 3], x2: [...x2, 20], y: [...y, null] });
    expect(more.mm_coef).toEqual(plain.mm_coef);
    expect(more.set_aside).toBe(1);
  });
});

describe("wild records", () => {
  it("one of 1e100, in y or in x, is left out and nothing else moves", () => {
    const x = Array.from({ length: 30 }, (_, i) => i);
    const generator = generatorFromSeed(6);
    const y = x.map((v) => 1 + v + generator.next());
    const without = run({ x: x.filter((_, i) => i !== 3), y: y.filter((_, i) => i !== 3) });
    for (const wild of [
      { x, y: y.map((v, i) => (i === 3 ? 1e100 : v)) },
      { x: x.map((v, i) => (i === 3 ? 1e100 : v)), y },
    ]) {
      const found = run(wild);
      expect(found.left_out).toBe(1);
      // The scale counts it, so that the bisquare is a little wider than without it.
      closeTo(found.mm_coef?.[1] as number, without.mm_coef?.[1] as number, 0.01);
    }
  });
  it("two in five of them turn least squares and Huber's line, and not MM", () => {
    const n = 50;
    const generator = generatorFromSeed(9);
    const x = Array.from({ length: n }, (_, i) => i / 5 + (i % 5 < 2 ? 40 : 0));
    const y = x.map((v, i) => (i % 5 < 2 ? -60 : 1 + 2 * v) + generator.next());
    const found = run({ x, y });
    expect(found.huber_coef?.[1]).toBeLessThan(0);
    closeTo(found.mm_coef?.[1] as number, 2, 0.02);
    expect(found.left_out).toBe(20);
    const cautions = robustRegression.cautions?.({ x, y }, found as never) ?? [];
    expect(cautions).toEqual([{ code: "records-without-weight", facts: { count: 20, of: 50 } }]);
  });
  it("none, and all is near least squares", () => {
    const { y, x1, x2 } = records(60, 1000, 4);
    const found = run({ y: y.slice(1), x1: x1.slice(1), x2: x2.slice(1) });
    expect(found.left_out).toBe(0);
    closeTo(found.mm_coef?.[1] as number, 3, 0.02);
  });
});

describe("declines", () => {
  const x = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10];
  const y = [1.1, 2.3, 2.8, 4.4, 5.1, 5.7, 7.2, 8.4, 8.8, 10.3];
  it.each([
    ["four records", { x: x.slice(0, 4), y: y.slice(0, 4) }, "too-few-records"],
    ["an x that is all the same", { x: x.map(() => 3), y }, "no-spread"],
    ["two columns that say the same", { x1: x, x2: x.map((v) => 2 * v - 1), y }, "collinear"],
    ["records on a line", { x, y: x.map((v) => 2 * v) }, "perfect-fit"],
    ["six of ten records on a line", { x, y: x.map((v, i) => (i < 6 ? 2 * v : 30 - i * i)) }, "most-on-one-plane"],
    [
      "six of ten records on a line, but for rounding",
      { x: x.map((v) => v * 0.37), y: x.map((v, i) => (i < 6 ? 0.1 + v * 0.37 * 1.7 : 30.3 - i * i)) },
      "most-on-one-plane",
    ],
    ["a y that is all the same", { x, y: x.map(() => 4) }, "perfect-fit"],
    ["a y of two values", { x, y: x.map((v) => (v > 3 ? 1 : 0)) }, "most-on-one-plane"],
    ["a bisquare that leaves out nearly all", { x, y, mm_c: 0.001 }, "not-converged"],
    ["a breakdown of more than a half", { x, y, s_breakdown: 0.6 }, "out-of-domain"],
    ["a tuning of nothing", { x, y, mm_c: 0 }, "out-of-domain"],
    ["no x", { y }, "input-missing"],
  ])("%s", (_, inputs, code) => expect(refused(inputs)).toBe(code));
});
