import fc from "fast-check";
import { expect, it } from "vitest";
import { powerProportion } from "../../../../src/core/questions/methods/power-proportion.ts";
import { closeTo } from "../../../support/close-to.ts";
import { fieldsOf, refusalOf } from "../../../support/fields-of.ts";
import { law } from "../../../support/law.ts";

/** Binomial chances by the ratio of neighbours. */
function chances(n: number, p: number): number[] {
  const list = [(1 - p) ** n];
  for (let k = 1; k <= n; k++) list.push((list[k - 1]! * (n - k + 1) * p) / (k * (1 - p)));
  return list;
}
const from = (list: readonly number[], k: number) => list.slice(Math.max(0, k)).reduce((sum, each) => sum + each, 0);

const rate = fc.integer({ min: 5, max: 95 }).map((each) => each / 100);
const trials = fc.integer({ min: 1, max: 60 });

law(
  "power is the chance of the counts that surprise, found one by one",
  [rate, rate, trials],
  (base_rate, hold_rate, n) => {
    const got = fieldsOf(powerProportion, { base_rate, hold_rate, n, alternative: "greater" });
    const [base, hold] = [chances(n, base_rate), chances(n, hold_rate)];
    let critical = n + 1;
    while (critical > 0 && from(base, critical - 1) <= 0.05) critical--;
    expect(got.critical_count).toBe(critical);
    closeTo(got.power!, from(hold, critical), 1e-9, { scale: 1 });
  },
);

law(
  "less often is more often of what does not hold",
  [rate, rate, trials],
  (base_rate, hold_rate, n) => {
    const one = fieldsOf(powerProportion, { base_rate, hold_rate, n, alternative: "less" });
    const other = fieldsOf(powerProportion, {
      base_rate: 1 - base_rate,
      hold_rate: 1 - hold_rate,
      n,
      alternative: "greater",
    });
    closeTo(one.power!, other.power!, 1e-9, { scale: 1 });
    expect(one.critical_count).toBe(n - other.critical_count!);
  },
  60,
);

law(
  "the trials found are the first that reach the power, and the last below it is one before those it stays from",
  [fc.constantFrom([0.5, 0.75], [0.2, 0.45], [0.7, 0.9], [0.6, 0.35])],
  ([base_rate, hold_rate]) => {
    const at = (n: number) => fieldsOf(powerProportion, { base_rate, hold_rate, n });
    const { n_first, n_from_here_on } = at(10);
    for (let n = 1; n < n_first!; n++) expect(at(n).power!).toBeLessThan(0.8);
    expect(at(n_first!).power!).toBeGreaterThanOrEqual(0.8);
    expect(at(n_from_here_on! - 1).power!).toBeLessThan(0.8);
    for (let n = n_from_here_on!; n < n_from_here_on! + 60; n++) expect(at(n).power!).toBeGreaterThanOrEqual(0.8);
  },
  8,
);

// R 4.2.2, stats::qbinom and pbinom with half the level at each end, and on the lower side alone.
it("looks on both sides, or for less, as R's functions do", () => {
  const both = fieldsOf(powerProportion, { base_rate: 0.4, hold_rate: 0.7, n: 25, alternative: "two-sided" });
  closeTo(both.power!, 0.810564010884988, 1e-10);
  expect([both.critical_count, both.critical_count_other, both.n_first, both.n_from_here_on]).toEqual([16, 4, 22, 24]);
  const less = fieldsOf(powerProportion, { base_rate: 0.6, hold_rate: 0.3, n: 20 });
  closeTo(less.power!, 0.772271797418161, 1e-10);
  expect([less.critical_count, less.n_first, less.n_from_here_on]).toEqual([7, 19, 21]);
});

it("finds no number of trials for a rate that is the base rate, or on the other side", () => {
  for (const hold_rate of [0.5, 0.3])
    expect(fieldsOf(powerProportion, { base_rate: 0.5, hold_rate, n: 20, alternative: "greater" }).n_first).toBeNull();
});

it.each([
  [{ base_rate: 0, hold_rate: 0.5, n: 10 }, "out-of-domain"],
  [{ base_rate: 0.5, hold_rate: 0.7, n: 10.5 }, "out-of-domain"],
  [{ base_rate: 0.5, hold_rate: 0.7, n: 0 }, "out-of-domain"],
])("declines %j", (inputs, code) => expect(refusalOf(powerProportion, inputs)).toBe(code));
