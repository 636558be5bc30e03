// The bootstrap: laws on random input, every resample by plain loops, drawn ones against all.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { MethodInputs } from "../../../../src/core/base/index.ts";
import { normalLowerTail, normalQuantile, quantileOfType } from "../../../../src/core/numerics/index.ts";
import { bootstrap } from "../../../../src/core/questions/methods/bootstrap.ts";
import { accelerationOf, bcaLevels } from "../../../../src/core/questions/resampling/bca-levels.ts";
import { closeTo } from "../../../support/close-to.ts";
import { law } from "../../../support/law.ts";

type Fields = Readonly<Record<string, unknown>>;
const run = (inputs: MethodInputs): Fields => {
  const made = bootstrap.run(inputs);
  return made.ok ? made.value : { refused: made.refusal.code };
};
const number = (fields: Fields, name: string): number => {
  const value = fields[name];
  if (typeof value !== "number") throw new Error(`${name} is ${String(value)}`);
  return value;
};

type Pair = readonly [x: number, y: number];
type Figure = (rows: readonly Pair[]) => number;
const mean = (list: readonly number[]) => list.reduce((sum, value) => sum + value, 0) / list.length;
const xs = (rows: readonly Pair[]) => rows.map(([x]) => x);
const rising = (rows: readonly Pair[]) => xs(rows).toSorted((a, b) => a - b);
const about = (rows: readonly Pair[], of: (row: Pair) => number, and: (row: Pair) => number) => {
  const [first, second] = [mean(rows.map(of)), mean(rows.map(and))];
  return rows.reduce((sum, row) => sum + (of(row) - first) * (and(row) - second), 0);
};
const [x, y] = [(row: Pair) => row[0], (row: Pair) => row[1]];
const over = (a: number, b: number) => (b > 1e-12 ? a / b : Number.NaN);
const figures: Readonly<Record<string, Figure>> = {
  mean: (rows) => mean(xs(rows)),
  median: (rows) => (rising(rows)[Math.ceil(rows.length / 2) - 1]! + rising(rows)[Math.floor(rows.length / 2)]!) / 2,
  "trimmed-mean": (rows) =>
    mean(rising(rows).slice(Math.floor(rows.length / 5), rows.length - Math.floor(rows.length / 5))),
  sd: (rows) => Math.sqrt(about(rows, x, x) / (rows.length - 1)),
  slope: (rows) => over(about(rows, x, y), about(rows, x, x)),
  correlation: (rows) => over(about(rows, x, y), Math.sqrt(about(rows, x, x) * about(rows, y, y))),
};
/** Every resample in order, n^n of them. */
function every<T>(list: readonly T[]): readonly (readonly T[])[] {
  let all: readonly (readonly T[])[] = [[]];
  for (let place = 0; place < list.length; place++) all = all.flatMap((before) => list.map((one) => [...before, one]));
  return all;
}
/** The fields as the definitions say them, from all resamples and those with one left out. */
function plainFields(drawn: readonly number[], estimate: number, u: readonly number[], level: number): Fields {
  const sorted = drawn.filter(Number.isFinite).toSorted((a, b) => a - b);
  const at = (p: number) => sorted[Math.max(1, Math.ceil(p * sorted.length - 1e-9)) - 1]!;
  const near = (value: number) => Math.abs(value - estimate) < 1e-9;
  const below = sorted.filter((value) => value < estimate && !near(value)).length + sorted.filter(near).length / 2;
  const z0 = normalQuantile(below / sorted.length);
  const sum = (power: number) => u.reduce((total, value) => total + value ** power, 0);
  const acceleration = sum(2) > 1e-20 ? sum(3) / (6 * sum(2) ** 1.5) : 0;
  const corrected = (p: number) => {
    const z = z0 + normalQuantile(p);
    return normalLowerTail(z0 + z / (1 - acceleration * z));
  };
  const [low, high] = [(1 - level) / 2, (1 + level) / 2];
  const centre = mean(sorted);
  return {
    estimate,
    resamples: sorted.length,
    dropped: drawn.length - sorted.length,
    se: Math.sqrt(mean(sorted.map((value) => (value - centre) ** 2))),
    percentile_low: at(low),
    percentile_high: at(high),
    percentile_low_type7: quantileOfType(sorted, low, 7),
    percentile_high_type7: quantileOfType(sorted, high, 7),
    ...(Number.isFinite(z0)
      ? { z0, acceleration, bca_low: at(corrected(low)), bca_high: at(corrected(high)) }
      : { z0: null, bca_low: null, bca_high: null }),
  };
}
function agree(got: Fields, expected: Fields): void {
  for (const [field, value] of Object.entries(expected))
    if (typeof value === "number") closeTo(number(got, field), value, 1e-8, { scale: 1 + Math.abs(value) });
    else expect(got[field]).toBe(value);
}
const left = (rows: readonly Pair[], of: Figure) => {
  const each = rows.map((_, at) => of(rows.toSpliced(at, 1))).filter(Number.isFinite);
  return each.map((value) => mean(each) - value);
};
const coordinate = fc.integer({ min: -30, max: 30 });

describe("every resample", () => {
  for (const [statistic, of] of Object.entries(figures))
    law(
      `is taken once: ${statistic}`,
      [fc.array(fc.tuple(coordinate, coordinate), { minLength: 3, maxLength: 5 }), fc.constantFrom(0.8, 0.9, 0.95)],
      (rows, level) => {
        const got = run({ x: xs(rows), y: rows.map(([, own]) => own), statistic, level, trim: 0.2 });
        if ("refused" in got) return new Set(xs(rows)).size < 3 || new Set(rows.map(([, own]) => own)).size < 3;
        agree(got, plainFields(every(rows).map(of), of(rows), left(rows, of), level));
        return true;
      },
      25,
    );

  it("of two groups draws each from itself", () => {
    const [a, b] = [
      [3.1, 4.7, 2.2],
      [5.9, 8.4, 3.3, 4.1],
    ];
    const got = run({ a, b, level: 0.9 });
    const drawn = every(a).flatMap((one) => every(b).map((other) => mean(one) - mean(other)));
    const influence = (list: readonly number[], sign: number) =>
      list.map((value) => (sign * (value - mean(list))) / list.length);
    agree(got, plainFields(drawn, mean(a) - mean(b), [...influence(a, 1), ...influence(b, -1)], 0.9));
    const turned = run({ a: b, b: a, level: 0.9 });
    closeTo(number(turned, "percentile_low_type7"), -number(got, "percentile_high_type7"), 1e-12);
    closeTo(number(turned, "acceleration"), -number(got, "acceleration"), 1e-12);
  });

  it("of clusters draws them whole", () => {
    const clusters: readonly (readonly Pair[])[] = [
      [
        [1, 2.1],
        [2, 2.9],
      ],
      [
        [3, 3.2],
        [4, 5],
        [4.5, 4.1],
      ],
      [[6, 6.3]],
      [
        [2.5, 3.5],
        [7, 6.6],
      ],
    ];
    const rows = clusters.flat();
    const cluster = clusters.flatMap((own, at) => own.map(() => `log ${at}`));
    const got = run({ x: xs(rows), y: rows.map(([, own]) => own), cluster });
    const of = (drawn: readonly (readonly Pair[])[]) => figures.slope!(drawn.flat());
    const each = clusters.map((_, at) => of(clusters.toSpliced(at, 1)));
    agree(
      got,
      plainFields(
        every(clusters).map(of),
        of(clusters),
        each.map((value) => mean(each) - value),
        0.95,
      ),
    );
    const middle = run({ x: xs(rows), cluster, statistic: "median" });
    closeTo(
      number(middle, "se"),
      number(
        plainFields(
          every(clusters).map((drawn) => figures.median!(drawn.flat())),
          0,
          [1],
          0.95,
        ),
        "se",
      ),
      1e-12,
    );
  });

  it("is taken up to ten records, up to twelve where asked for, then drawn", () => {
    const ofSize = (n: number, mode?: string) => run({ x: Array.from({ length: n }, (_, at) => at * at), mode });
    expect([ofSize(10).resamples, ofSize(10).seed]).toEqual([1e10, undefined]);
    expect(ofSize(12, "exact").resamples).toBe(12 ** 12);
    expect(ofSize(11).resamples).toBe(10_000);
    expect(ofSize(13, "exact").refused).toBe("too-large");
    // The law of a mean has the spread of the records over root n, whatever n.
    closeTo(
      number(ofSize(12, "exact"), "se"),
      Math.sqrt(mean(Array.from({ length: 12 }, (_, at) => (at * at - 506 / 12) ** 2)) / 12),
      1e-12,
    );
  });
});

describe("drawn resamples", () => {
  const rows = Array.from({ length: 9 }, (_, at): Pair => [at + 0.1 * at * at, 2 + at - 0.2 * ((at * 7) % 5)]);
  const inputs = { x: xs(rows), y: rows.map(([, own]) => own) };
  it.each(Object.keys(figures))("have the spread and the limits of all of them: %s", (statistic) => {
    const [all, drawn] = [run({ ...inputs, statistic }), run({ ...inputs, statistic, mode: "drawn", draws: 40_000 })];
    closeTo(number(drawn, "se"), number(all, "se"), 0.03);
    const width = number(all, "percentile_high") - number(all, "percentile_low");
    for (const field of ["percentile_low", "percentile_high", "bca_low", "bca_high"])
      closeTo(number(drawn, field), number(all, field), 0.05, { scale: width });
  });

  it("come back with their seed, and others with another", () => {
    const drawn = (seed: number) => run({ ...inputs, mode: "drawn", seed });
    expect(drawn(7)).toEqual(drawn(7));
    expect(drawn(8).se).not.toBe(drawn(7).se);
    expect(drawn(7)).toMatchObject({ seed: 7, resamples: 10_000 });
  });

  law(
    "do not ask in which order the records stand",
    [fc.array(fc.tuple(coordinate, coordinate), { minLength: 4, maxLength: 9 }), fc.nat(8)],
    (list, by) => {
      const turned = [...list.slice(by % list.length), ...list.slice(0, by % list.length)].reverse();
      const of = (own: readonly Pair[]) =>
        run({ x: xs(own), y: own.map(([, two]) => two), mode: "drawn", draws: 200, statistic: "slope" });
      expect(of(turned)).toEqual(of(list));
    },
    60,
  );

  law(
    "of a mean move and stretch with the records",
    [
      fc.array(coordinate, { minLength: 3, maxLength: 30 }),
      fc.integer({ min: -99, max: 99 }),
      fc.constantFrom(0.5, 2, 8),
    ],
    (list, shift, factor) => {
      const of = (own: readonly number[]) => run({ x: own, mode: "drawn", draws: 300 });
      const [one, other] = [of(list), of(list.map((value) => factor * value + shift))];
      if ("refused" in one) return one.refused === other.refused;
      for (const field of ["estimate", "percentile_low", "percentile_high", "ci_low", "ci_high"])
        closeTo(number(other, field), factor * number(one, field) + shift, 1e-9, { scale: 500 });
      closeTo(number(other, "se"), factor * number(one, "se"), 1e-9, { scale: 1 });
      return true;
    },
    60,
  );
});

describe("BCa", () => {
  it("has the levels of the percentile interval without bias and acceleration", () => {
    const { low, high } = bcaLevels(0, 0, 0.95);
    closeTo(low, 0.025, 1e-12);
    closeTo(high, 0.975, 1e-12);
  });

  it("has no limit where its denominator is not above zero", () => {
    expect(bcaLevels(0, 0.6, 0.95).high).toBeNaN();
    expect(bcaLevels(0, 0.6, 0.95).low).toBeGreaterThan(0);
  });

  it("accelerates not at all for a figure that is even, and as the skewness says for a mean", () => {
    expect(accelerationOf(Float64Array.of(1, 2, 3), Int32Array.of(0, 3))).toBeCloseTo(0, 15);
    expect(accelerationOf(Float64Array.of(2, 2, 2), Int32Array.of(0, 3))).toBe(0);
    // Skewness of the records over 6 root n (Efron and Tibshirani 1993, section 14.3).
    const list = [1, 2, 3, 5, 9, 11, 20];
    const [n, centre] = [list.length, mean(list)];
    const moment = (power: number) => mean(list.map((value) => (value - centre) ** power));
    const got = run({ x: list });
    closeTo(number(got, "acceleration"), moment(3) / moment(2) ** 1.5 / (6 * Math.sqrt(n)), 1e-12);
  });

  it("gives way to the percentile interval where no resample lies on one side", () => {
    // The largest correlation that can be: no resample is above it, so z0 is infinite where ties count at all.
    const got = run({ x: [1, 2, 3, 4], y: [1, 2, 3, 4.000001], statistic: "slope", mode: "drawn", draws: 100 });
    expect(got.bca_low === null ? got.ci_low === got.percentile_low : got.ci_low === got.bca_low).toBe(true);
  });
});

describe("what is declined", () => {
  it.each([
    ["values that are all the same", { x: [2, 2, 2, 2] }, "no-spread"],
    ["a slope on x that is all the same", { x: [2, 2, 2], y: [1, 2, 3] }, "no-spread"],
    ["two records", { x: [1, 2] }, "too-few-records"],
    ["all missing", { x: [Number.NaN, Number.NaN, Number.NaN] }, "too-few-records"],
    ["two clusters", { x: [1, 2, 3, 4], cluster: ["a", "a", "b", "b"] }, "too-few-records"],
    ["clusters of two groups", { a: [1, 2], b: [3, 4], cluster: ["a", "b", "a", "b"] }, "out-of-domain"],
    ["nothing at all", {}, "out-of-domain"],
    ["infinity", { x: [1, 2, Number.NEGATIVE_INFINITY] }, "not-finite"],
    ["values at the end of doubles", { x: [1e308, -1e308, 1e308] }, "not-finite"],
    ["an unknown figure", { x: [1, 2, 3], statistic: "mode" }, "out-of-domain"],
    ["a trimmed half", { x: [1, 2, 3], trim: 0.5 }, "out-of-domain"],
    ["too many draws", { x: [1, 2, 3], draws: 1e9 }, "out-of-domain"],
  ])("%s", (_, inputs, code) => expect(run(inputs).refused).toBe(code));
});
