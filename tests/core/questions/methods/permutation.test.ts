// The permutation test: laws on random input, and each p by plain enumeration.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { MethodInputs } from "../../../../src/core/base/index.ts";
import { everySubset } from "../../../../src/core/numerics/index.ts";
import { correlation } from "../../../../src/core/questions/fits/correlation.ts";
import { permutation } from "../../../../src/core/questions/methods/permutation.ts";
import { spearman } from "../../../../src/core/questions/methods/spearman.ts";
import { closeTo } from "../../../support/close-to.ts";
import { law } from "../../../support/law.ts";

type Fields = Readonly<Record<string, unknown>>;
const run = (inputs: MethodInputs): Fields => {
  const made = permutation.run(inputs);
  return made.ok ? made.value : { refused: made.refusal.code };
};
const number = (fields: Fields, name: string): number => {
  const value = fields[name];
  if (typeof value !== "number") throw new Error(`${name} is ${String(value)}`);
  return value;
};
const whole = (least: number, most: number) =>
  fc.array(fc.integer({ min: -9, max: 9 }), { minLength: least, maxLength: most });
const pairs = (least: number, most: number) =>
  fc.array(fc.tuple(fc.integer({ min: -9, max: 9 }), fc.integer({ min: -9, max: 9 }), fc.constantFrom("c", "s")), {
    minLength: least,
    maxLength: most,
  });
type Pair = readonly [x: number, y: number, block: string];
const columns = (rows: readonly Pair[]) => ({ x: rows.map(([x]) => x), y: rows.map(([, y]) => y) });

/** Every order of a list, by inserting. */
function orders(list: readonly number[]): readonly (readonly number[])[] {
  if (list.length === 0) return [[]];
  const [first = 0, ...rest] = list;
  return orders(rest).flatMap((order) => Array.from({ length: list.length }, (_, at) => order.toSpliced(at, 0, first)));
}
/** Shares of figures as far from zero, as large, as small as the one seen. */
const shares = (figures: readonly number[], seen: number) => ({
  p_two_sided: figures.filter((figure) => Math.abs(figure) >= Math.abs(seen) - 1e-9).length / figures.length,
  p_greater: figures.filter((figure) => figure >= seen - 1e-9).length / figures.length,
  p_less: figures.filter((figure) => figure <= seen + 1e-9).length / figures.length,
});
function agree(got: Fields, figures: readonly number[], seen: number): void {
  closeTo(number(got, "statistic"), seen, 1e-9, { scale: 1 });
  expect(got.arrangements).toBe(figures.length);
  for (const [field, share] of Object.entries(shares(figures, seen))) closeTo(number(got, field), share, 1e-12);
}
const mean = (list: readonly number[]) => list.reduce((sum, value) => sum + value, 0) / list.length;
const middle = (list: readonly number[]) => {
  const sorted = list.toSorted((a, b) => a - b);
  return (sorted[Math.floor((sorted.length - 1) / 2)]! + sorted[Math.ceil((sorted.length - 1) / 2)]!) / 2;
};

describe("every arrangement", () => {
  for (const [statistic, of] of [
    ["difference-of-means", mean],
    ["difference-of-medians", middle],
  ] as const)
    law(
      `of two groups is every choice of records: ${statistic}`,
      [whole(1, 5), whole(2, 5)],
      (a, b) => {
        const got = run({ a, b, statistic });
        const pooled = [...a, ...b];
        if ("refused" in got) return new Set(pooled).size === 1;
        const figures: number[] = [];
        everySubset(pooled.length, a.length, (chosen) =>
          figures.push(of([...chosen].map((at) => pooled[at]!)) - of(pooled.filter((_, at) => !chosen.includes(at)))),
        );
        agree(got, figures, of(a) - of(b));
        return true;
      },
      80,
    );

  law(
    "of two quantities is every order of one",
    [pairs(3, 6)],
    (rows) => {
      const { x, y } = columns(rows);
      const [fixed, got] = [Float64Array.from(x), run({ x, y })];
      if ("refused" in got) return new Set(x).size === 1 || new Set(y).size === 1;
      agree(
        got,
        orders(y).map((order) => correlation(fixed, Float64Array.from(order))),
        correlation(fixed, Float64Array.from(y)),
      );
      return true;
    },
    60,
  );

  law(
    "within blocks is every order within each",
    [pairs(4, 7)],
    (rows) => {
      const { x, y } = columns(rows);
      const got = run({ x, y, block: rows.map(([, , block]) => block) });
      const blocks = ["c", "s"]
        .map((name) => rows.filter(([, , block]) => block === name))
        .filter((own) => own.length > 0);
      const away = (list: readonly number[]) => list.map((value) => value - mean(list));
      const u = Float64Array.from(blocks.flatMap((own) => away(own.map(([one]) => one))));
      const vs = blocks
        .map((own) => orders(away(own.map(([, two]) => two))))
        .reduce((all, own) => all.flatMap((before) => own.map((order) => [...before, ...order])), [
          [],
        ] as readonly (readonly number[])[]);
      const seen = Float64Array.from(blocks.flatMap((own) => away(own.map(([, two]) => two))));
      const flat = (list: ArrayLike<number>) => Array.from(list).every((value) => Math.abs(value) < 1e-12);
      if ("refused" in got) return flat(u) || flat(seen) || vs.length === 1;
      const of = (v: Float64Array) =>
        u.reduce((sum, value, at) => sum + value * v[at]!, 0) / Math.hypot(...u) / Math.hypot(...seen);
      agree(
        got,
        vs.map((order) => of(Float64Array.from(order))),
        of(seen),
      );
      return true;
    },
    60,
  );

  law(
    "of pairs is every choice of signs",
    [whole(2, 8)],
    (d) => {
      const b = d.map((_, at) => at);
      const got = run({ a: d.map((value, at) => value + at), b, paired: true });
      if ("refused" in got) return d.every((value) => value === 0);
      const figures = Array.from({ length: 2 ** d.length }, (_, signs) =>
        mean(d.map((value, at) => ((signs >> at) & 1 ? value : -value))),
      );
      agree(got, figures, mean(d));
      return true;
    },
    60,
  );

  it("of ranks has the p that the rank correlation has with ties", () => {
    const [x, y] = [
      [1, 2, 2, 3, 4, 5, 5],
      [2, 1, 3, 3, 4, 6, 5],
    ];
    const ranks = spearman.run({ x, y });
    const got = run({ x, y, statistic: "spearman" });
    if (!ranks.ok) throw new Error("declined");
    closeTo(number(got, "p_two_sided"), number(ranks.value, "p_exact"), 1e-12);
    closeTo(number(got, "statistic"), number(ranks.value, "rho"), 1e-12);
  });

  it("has the same p for slope and correlation, and the slope of least squares", () => {
    const [x, y] = [
      [1, 2, 4, 7, 8],
      [2.1, 2.4, 2.3, 3.9, 3.5],
    ];
    const [slope, r] = [run({ x, y, statistic: "slope" }), run({ x, y })];
    expect(slope.p_two_sided).toBe(r.p_two_sided);
    const [mx, my] = [mean(x), mean(y)];
    const sum = (of: (at: number) => number) => x.reduce((total, _, at) => total + of(at), 0);
    closeTo(number(slope, "statistic"), sum((i) => (x[i]! - mx) * (y[i]! - my)) / sum((i) => (x[i]! - mx) ** 2), 1e-12);
  });

  it("tells ties at a figure of zero", () => {
    // The mean difference seen is zero but for rounding, and so is that of the arrangement turned round.
    const got = run({ a: [0.1, 0.2, 0.6], b: [0.15, 0.25, 0.5] });
    expect(got.p_two_sided).toBe(1);
    const far = run({ a: [1e6 + 0.1, 1e6 + 0.2], b: [1e6 + 0.3, 1e6 + 0.4] });
    closeTo(number(far, "p_two_sided"), 1 / 3, 1e-12);
  });
});

describe("drawn arrangements", () => {
  const a = [11.9, 12.4, 10.8, 13.1, 12.2];
  const b = [10.2, 11.1, 10.6, 9.9, 11.7, 10.4];
  const x = [9.1, 9.8, 10.4, 11, 12.2, 13, 13.9];
  const y = [2.3, 2.26, 2.21, 2.19, 2.66, 2.58, 2.55];
  const block = ["c", "c", "c", "c", "s", "s", "s"];
  it.each([
    ["two groups", { a, b }],
    ["medians", { a, b, statistic: "difference-of-medians" }],
    ["pairs", { a, b: b.slice(1), paired: true }],
    ["orders", { x, y }],
    ["orders within blocks", { x, y, block }],
    ["orders of ranks", { x, y, block, statistic: "spearman" }],
  ])("of %s are within four standard errors of all of them, and never zero", (_, inputs) => {
    const [all, drawn] = [run(inputs), run({ ...inputs, mode: "drawn", draws: 40_000 })];
    for (const field of ["p_two_sided", "p_greater", "p_less"]) {
      const p = number(all, field);
      expect(Math.abs(number(drawn, field) - p)).toBeLessThan(4 * Math.sqrt((p * (1 - p)) / 40_000) + 1 / 40_000);
      expect(number(drawn, field)).toBeGreaterThan(0);
    }
    expect(drawn.statistic).toBe(all.statistic);
    expect(drawn.arrangements).toBe(40_001);
  });

  it("come back with their seed, and others with another", () => {
    const drawn = (seed: number) => run({ a, b, mode: "drawn", seed });
    expect(drawn(7)).toEqual(drawn(7));
    expect(drawn(8).p_two_sided).not.toBe(drawn(7).p_two_sided);
    expect(drawn(7).seed).toBe(7);
  });

  law(
    "do not ask in which order the records stand",
    [pairs(4, 9), fc.nat(8)],
    (rows, by) => {
      const turned = [...rows.slice(by % rows.length), ...rows.slice(0, by % rows.length)].reverse();
      const of = (list: readonly Pair[]) =>
        run({ ...columns(list), block: list.map(([, , name]) => name), mode: "drawn", draws: 200 });
      const [one, other] = [of(rows), of(turned)];
      expect(other.refused).toBe(one.refused);
      expect(other.p_two_sided).toBe(one.p_two_sided);
      expect(other.p_less).toBe(one.p_less);
    },
    60,
  );

  law(
    "of two groups turn with them and move with them",
    [whole(2, 9), whole(2, 9), fc.integer({ min: -100, max: 100 })],
    (one, two, shift) => {
      const of = (first: readonly number[], second: readonly number[]) =>
        run({ a: first, b: second, mode: "drawn", draws: 300 });
      const [got, turned] = [of(one, two), of(two, one)];
      if ("refused" in got) return got.refused === turned.refused;
      closeTo(number(turned, "statistic"), -number(got, "statistic"), 1e-12, { scale: 10 });
      if (one.toSorted().join() !== two.toSorted().join()) {
        expect(turned.p_two_sided).toBe(got.p_two_sided);
        expect(turned.p_greater).toBe(got.p_less);
      }
      const moved = of(
        one.map((value) => value + shift),
        two.map((value) => value + shift),
      );
      expect(moved.p_two_sided).toBe(got.p_two_sided);
      return true;
    },
    60,
  );
});

describe("what is declined", () => {
  it.each([
    ["values that are all the same", { a: [1, 1], b: [1, 1, 1] }, "no-spread"],
    ["an empty group", { a: [], b: [1, 2] }, "too-few-records"],
    ["nothing at all", {}, "out-of-domain"],
    [
      "x that is the same within blocks",
      { x: [1, 1, 2, 2], y: [1, 2, 3, 4], block: ["a", "a", "b", "b"] },
      "no-spread",
    ],
    ["infinity", { x: [1, 2, Number.POSITIVE_INFINITY], y: [1, 2, 3] }, "not-finite"],
    ["values at the end of doubles", { a: [1e308, 1e308, -1e308], b: [-1e308, 1e308] }, "not-finite"],
    [
      "every order of many",
      { x: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11], y: [2, 1, 3, 4, 5, 6, 7, 8, 9, 10, 12], mode: "exact" },
      "too-large",
    ],
    ["an unknown figure", { a: [1, 2], b: [3, 4], statistic: "mode" }, "out-of-domain"],
    ["half a draw", { a: [1, 2], b: [3, 4], draws: 1000.5 }, "out-of-domain"],
  ])("%s", (_, inputs, code) => expect(run(inputs).refused).toBe(code));
});
