// Two groups: laws on random input, and each figure by a second way.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Method, MethodInputs } from "../../../../src/core/base/index.ts";
import { everySubset, noncentralTLowerTail, noncentralTUpperTail } from "../../../../src/core/numerics/index.ts";
import { cliffDelta } from "../../../../src/core/questions/methods/cliff-delta.ts";
import { hedgesG } from "../../../../src/core/questions/methods/hedges-g.ts";
import { mannWhitney } from "../../../../src/core/questions/methods/mann-whitney.ts";
import { pairedT } from "../../../../src/core/questions/methods/paired-t.ts";
import { closeTo } from "../../../support/close-to.ts";
import { law } from "../../../support/law.ts";

type Fields = Readonly<Record<string, number | null | string>>;
const run = (method: Method, inputs: MethodInputs): Fields => {
  const made = method.run(inputs);
  return made.ok ? (made.value as Fields) : { refused: made.refusal.code };
};
const number = (fields: Fields, name: string): number => {
  const value = fields[name];
  if (typeof value !== "number") throw new Error(`${name} is ${String(value)}`);
  return value;
};
/** Numbers with and without ties, in hundredths: sums of them are exact enough to compare. */
const values = (least: number) =>
  fc.array(
    fc.oneof(
      fc.integer({ min: -4, max: 4 }),
      fc.integer({ min: -900, max: 900 }).map((whole) => whole / 100),
    ),
    {
      minLength: least,
      maxLength: 8,
    },
  );
const vary = (a: readonly number[], b: readonly number[]) => new Set(a).size > 1 && new Set(b).size > 1;

describe("Mann and Whitney", () => {
  law(
    "count U and p as every choice of records does",
    [values(1), values(2)],
    (a, b) => {
      const got = run(mannWhitney, { a, b });
      if ("refused" in got) return new Set([...a, ...b]).size === 1;
      const pooled = [...a, ...b];
      const above = (own: readonly number[], rest: readonly number[]) =>
        own.reduce((sum, x) => sum + rest.reduce((pairs, y) => pairs + (x > y ? 1 : x === y ? 0.5 : 0), 0), 0);
      const [U, middle] = [above(a, b), (a.length * b.length) / 2];
      let [all, far, large, small] = [0, 0, 0, 0];
      everySubset(pooled.length, a.length, (chosen) => {
        const other = above(
          [...chosen].map((at) => pooled[at]!),
          pooled.filter((_, at) => !chosen.includes(at)),
        );
        all++;
        if (Math.abs(other - middle) >= Math.abs(U - middle)) far++;
        if (other >= U) large++;
        if (other <= U) small++;
      });
      expect(got.U).toBe(U);
      closeTo(number(got, "p_exact"), far / all, 1e-12);
      closeTo(number(run(mannWhitney, { a, b, alternative: "greater" }), "p_exact"), large / all, 1e-12);
      closeTo(number(run(mannWhitney, { a, b, alternative: "less" }), "p_exact"), small / all, 1e-12);
    },
    60,
  );

  law("turn their sign when the groups are swapped", [values(2), values(2)], (a, b) => {
    const [one, other] = [run(mannWhitney, { a, b }), run(mannWhitney, { a: b, b: a })];
    if ("refused" in one) return "refused" in other;
    expect(number(one, "hodges_lehmann")).toBeCloseTo(-number(other, "hodges_lehmann"), 12);
    expect(number(one, "U") + number(other, "U")).toBe(a.length * b.length);
    closeTo(number(one, "p"), number(other, "p"), 1e-12);
    if (one.ci95_low !== null) expect(number(one, "ci95_low")).toBeCloseTo(-number(other, "ci95_high"), 12);
    return true;
  });

  law("ask for nothing but order: a rising change of scale leaves p as it is", [values(2), values(2)], (a, b) => {
    const bent = (list: readonly number[]) => list.map((value) => Math.exp(value / 3));
    expect(run(mannWhitney, { a: bent(a), b: bent(b) }).p).toBe(run(mannWhitney, { a, b }).p);
  });

  it("have an interval of those shifts that the test does not reject", () => {
    const [a, b] = [
      [1.1, 2.5, 3.2, 4.8, 6.1],
      [0.3, 1.9, 2.2, 3.7],
    ];
    const got = run(mannWhitney, { a, b, level: 0.9 });
    const p = (shift: number) => number(run(mannWhitney, { a: a.map((value) => value - shift), b }), "p_exact");
    const [low, high] = [number(got, "ci95_low"), number(got, "ci95_high")];
    for (const inside of [low + 1e-6, high - 1e-6]) expect(p(inside)).toBeGreaterThan(0.1);
    for (const outside of [low - 1e-6, high + 1e-6]) expect(p(outside)).toBeLessThanOrEqual(0.1);
    closeTo(p(low - 1e-6), 1 - number(got, "actual_level"), 1e-12);
  });

  it("have their critical value: U = 23 of 10 and 10 is the last below 5 % (Mann and Whitney 1947, as in all tables)", () => {
    // b below a in 23 pairs: ranks of a by the pairs each wins.
    const b = Array.from({ length: 10 }, (_, at) => 2 * at);
    const withU = (U: number) => {
      const a = Array.from({ length: 10 }, (_, at) => -20 + at);
      for (let left = U, at = 9; left > 0; at--) {
        const wins = Math.min(10, left);
        a[at] = 2 * wins - 1 - at / 100 + 0.05;
        left -= wins;
      }
      return run(mannWhitney, { a, b });
    };
    expect(withU(23).U).toBe(23);
    expect(number(withU(23), "p_exact")).toBeLessThan(0.05);
    expect(number(withU(24), "p_exact")).toBeGreaterThan(0.05);
  });

  it("fall back to the normal law for many records, with and without ties", () => {
    const a = Array.from({ length: 120 }, (_, at) => at + 0.25);
    const b = Array.from({ length: 120 }, (_, at) => at);
    const got = run(mannWhitney, { a, b });
    expect([got.p_exact, got.actual_level, got.p]).toEqual([null, null, got.p_normal]);
    expect(number(got, "ci95_low")).toBeLessThan(number(got, "ci95_high"));
    expect(run(mannWhitney, { a: a.map(Math.floor), b }).ci95_low).toBeNull();
  });

  it.each([
    ["one value throughout", { a: [2, 2], b: [2, 2, 2] }, "no-spread"],
    ["an empty group", { a: [], b: [1, 2, 3] }, "too-few-records"],
    ["all missing", { a: [Number.NaN], b: [1, 2, 3] }, "too-few-records"],
    ["infinity", { a: [1, Number.POSITIVE_INFINITY], b: [1, 2, 3] }, "not-finite"],
    ["differences beyond doubles", { a: [1e308, 1], b: [-1e308, 2] }, "not-finite"],
    ["a level of one", { a: [1, 2], b: [3, 4], level: 1 }, "out-of-domain"],
  ])("decline %s", (_, inputs, code) => expect(run(mannWhitney, inputs).refused).toBe(code));
});

describe("paired differences", () => {
  law(
    "are those of one column against zero, whatever is added to both",
    [values(3), fc.integer({ min: -50, max: 50 })],
    (d, shift) => {
      const b = d.map((_, at) => at * 0.5);
      const a = d.map((value, at) => value + at * 0.5);
      const got = run(pairedT, { a, b });
      if ("refused" in got) return new Set(d).size === 1;
      const n = d.length;
      const mean = d.reduce((sum, value) => sum + value, 0) / n;
      const se = Math.sqrt(d.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (n - 1) / n);
      closeTo(number(got, "difference"), mean, 1e-12, { scale: 10 });
      closeTo(number(got, "se"), se, 1e-12, { scale: 10 });
      const moved = run(pairedT, { a: a.map((value) => value + shift), b: b.map((value) => value + shift) });
      closeTo(number(moved, "t"), number(got, "t"), 1e-10, { scale: 1 + Math.abs(number(got, "t")) });
      const turned = run(pairedT, { a: b, b: a });
      closeTo(number(turned, "t"), -number(got, "t"), 1e-12, { scale: 1 + Math.abs(number(got, "t")) });
      return true;
    },
  );

  it("have one-sided p that make up one, and one-sided intervals that end where two-sided ones of twice the rest do", () => {
    const pairs = { a: [3.1, 2.7, 4.4, 3.9, 5.2], b: [2.9, 2.8, 3.7, 3.3, 4.9], null_value: 0.1 };
    const [greater, less] = ["greater", "less"].map((alternative) => run(pairedT, { ...pairs, alternative }));
    closeTo(number(greater!, "p") + number(less!, "p"), 1, 1e-14);
    const two = run(pairedT, { ...pairs, level: 0.9 });
    closeTo(number(greater!, "ci95_low"), number(two, "ci95_low"), 1e-13);
    closeTo(number(less!, "ci95_high"), number(two, "ci95_high"), 1e-13);
    expect([greater!.ci95_high, less!.ci95_low]).toEqual([null, null]);
  });

  it.each([
    ["differences that are all the same but for rounding", { a: [0.3, 0.6, 1.1], b: [0.2, 0.5, 1] }, "no-spread"],
    ["one pair", { a: [1, Number.NaN], b: [2, 3] }, "too-few-records"],
    ["lists of unlike length", { a: [1, 2, 3], b: [1, 2] }, "out-of-domain"],
    ["differences beyond doubles", { a: [1e308, -1e308], b: [-1e308, 1e308] }, "not-finite"],
  ])("decline %s", (_, inputs, code) => expect(run(pairedT, inputs).refused).toBe(code));
});

describe("Cliff's delta", () => {
  law("is the mean sign of all pairs, and its variance is the plain double sum", [values(2), values(2)], (a, b) => {
    const got = run(cliffDelta, { a, b });
    const [n, m] = [a.length, b.length];
    const sign = a.map((x) => b.map((y) => Math.sign(x - y)));
    const delta = sign.flat().reduce((sum, one) => sum + one, 0) / (n * m);
    const rows = sign.map((row) => row.reduce((sum, one) => sum + one, 0) / m);
    const columns = b.map((_, j) => sign.reduce((sum, row) => sum + row[j]!, 0) / n);
    const square = (list: readonly number[]) => list.reduce((sum, value) => sum + (value - delta) ** 2, 0);
    const plain = (m * m * square(rows) + n * n * square(columns) - square(sign.flat())) / (n * m * (n - 1) * (m - 1));
    closeTo(number(got, "delta"), delta, 1e-12, { scale: 1 });
    closeTo(number(got, "variance"), Math.max(plain, (1 - delta ** 2) / (n * m - 1)), 1e-10, { scale: 1 });
    const turned = run(cliffDelta, { a: b, b: a });
    closeTo(number(turned, "delta"), -delta, 1e-12, { scale: 1 });
    if (got.ci95_low === null) return turned.ci95_low === null;
    closeTo(number(got, "ci95_low"), -number(turned, "ci95_high"), 1e-10, { scale: 1 });
    expect(number(got, "ci95_low")).toBeGreaterThanOrEqual(-1 - 1e-12);
    expect(number(got, "ci95_high")).toBeLessThanOrEqual(1 + 1e-12);
    return true;
  });

  it("has a wider interval by t than by the normal law", () => {
    const groups = { a: [4, 5, 3, 4], b: [2, 3, 4, 1] };
    const width = (fields: Fields) => number(fields, "ci95_high") - number(fields, "ci95_low");
    expect(width(run(cliffDelta, { ...groups, quantile: "t" }))).toBeGreaterThan(width(run(cliffDelta, groups)));
  });
});

describe("Hedges' g", () => {
  law(
    "keeps its limits where the noncentral t puts the rest of the level, and turns with the groups",
    [values(2), values(2), fc.constantFrom(0.8, 0.95)],
    (a, b, level) => {
      const got = run(hedgesG, { a, b, level });
      if ("refused" in got) return !vary(a, b);
      const [n, m] = [a.length, b.length];
      const unit = Math.sqrt(1 / n + 1 / m);
      const t = number(got, "d") / unit;
      if (Math.abs(t) > 30 || n + m < 5) return true;
      const rest = (1 - level) / 2;
      closeTo(noncentralTUpperTail(t, n + m - 2, number(got, "d_low") / unit), rest, 1e-6);
      closeTo(noncentralTLowerTail(t, n + m - 2, number(got, "d_high") / unit), rest, 1e-6);
      const turned = run(hedgesG, { a: b, b: a, level });
      closeTo(number(turned, "g_low"), -number(got, "g_high"), 1e-6, { scale: 1 + Math.abs(number(got, "g")) });
      const scaled = run(hedgesG, {
        a: a.map((value) => 25.4 * value + 7),
        b: b.map((value) => 25.4 * value + 7),
        level,
      });
      closeTo(number(scaled, "g"), number(got, "g"), 1e-10, { scale: 1 });
      return true;
    },
    60,
  );

  it.each([
    [2, 0.5641895835],
    [3, 0.7236012546],
    [4, 0.7978845608],
    [10, 0.922745608],
  ])("corrects by gamma functions: J(%i) = %f (Hedges 1981, eq. 6e, by gamma of halves)", (df, J) => {
    const a = Array.from({ length: df }, (_, at) => at);
    closeTo(number(run(hedgesG, { a, b: [1, 3] }), "J"), J, 1e-9);
  });
});
