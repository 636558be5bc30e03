import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { proportionInterval, wilsonInterval } from "../../../../src/core/questions/methods/proportion-interval.ts";
import { closeTo } from "../../../support/close-to.ts";

// R 4.2.2, stats::qbeta and the formula; the source stands in the file.
const reference = JSON.parse(readFileSync("tests/reference/stats/cases/proportion-hold-rates.json", "utf8"));

it.each(Object.keys(reference.expected))("gives %s of eight hold rates as R does", (field) => {
  const run = proportionInterval.run({ ...reference.data, level: 0.95 });
  const got = run.ok ? (run.value as Record<string, number[]>)[field]! : [];
  (reference.expected[field].value as number[]).forEach((value, i) => {
    closeTo(got[i]!, value, 1e-9, { scale: Math.max(value, 0.01) });
  });
  expect(got).toHaveLength(8);
});

it("refuses a share of no trials", () => {
  expect(proportionInterval.run({ k: 0, n: 0 })).toMatchObject({ ok: false, refusal: { code: "too-few-records" } });
});

it("refuses more successes than trials", () => {
  expect(proportionInterval.run({ k: 4, n: 3 })).toMatchObject({ ok: false, refusal: { code: "out-of-domain" } });
});

it("keeps both ends between none and all", () => {
  for (let k = 0; k <= 7; k++) {
    const { low, high } = wilsonInterval(k, 7, 0.95);
    expect(low >= 0 && high <= 1 && low < high).toBe(true);
  }
});

it("leaves a missing count in its place, and declines where all are missing", () => {
  const run = proportionInterval.run({ k: [3, Number.NaN, 0], n: [5, 4, 7], level: 0.9 });
  const values = run.ok ? (run.value.wilson_low as (number | null)[]) : [];
  expect(values.map((each) => each === null)).toEqual([false, true, false]);
  expect(proportionInterval.run({ k: [Number.NaN], n: [3] })).toMatchObject({ ok: false });
});

it("bounds what always or never held by the root of the level, as Clopper and Pearson do", () => {
  for (const [n, level] of [
    [3, 0.95],
    [20, 0.9],
    [7, 0.99],
  ] as const) {
    const tail = (1 - level) / 2;
    const all = proportionInterval.run({ k: n, n, level });
    const none = proportionInterval.run({ k: 0, n, level });
    closeTo(Number(all.ok && all.value.clopper_pearson_low), tail ** (1 / n), 1e-12);
    closeTo(Number(none.ok && none.value.clopper_pearson_high), 1 - tail ** (1 / n), 1e-12);
  }
});

it("ends where the score test has the level, after Wilson", () => {
  const z = 1.959963984540054;
  for (const [k, n] of [
    [1, 5],
    [9, 10],
    [40, 300],
  ] as const) {
    const { estimate, low, high } = wilsonInterval(k, n, 0.95);
    for (const end of [low, high]) closeTo(Math.abs(estimate - end) / Math.sqrt((end * (1 - end)) / n), z, 1e-11);
  }
});
