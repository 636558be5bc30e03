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
