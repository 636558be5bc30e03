import fc from "fast-check";
import { expect } from "vitest";
import { pAdjust } from "../../../../src/core/questions/methods/p-adjust.ts";
import { closeTo } from "../../../support/close-to.ts";
import { refusalOf } from "../../../support/fields-of.ts";
import { law } from "../../../support/law.ts";

type Lists = Readonly<Record<string, readonly (number | null)[]>>;
const adjusted = (p: readonly number[], n?: number): Lists => {
  const outcome = pAdjust.run({ p, ...(n === undefined ? {} : { n }) });
  if (!outcome.ok) throw new Error(outcome.refusal.code);
  return outcome.value as Lists;
};
const ways = ["holm", "hochberg", "bonferroni", "benjamini_hochberg", "benjamini_yekutieli"] as const;
const p = fc
  .array(fc.integer({ min: 0, max: 1000 }), { minLength: 1, maxLength: 25 })
  .map((list) => list.map((each) => (each / 1000) ** 2));

law("each value is what its definition over all others gives", [p], (list) => {
  const n = list.length;
  const below = (value: number) => list.filter((each) => each < value).length;
  const upTo = (value: number) => list.filter((each) => each <= value).length;
  const most = (values: readonly number[]) => Math.min(1, Math.max(...values));
  const least = (values: readonly number[]) => Math.min(1, ...values);
  const harmonic = list.reduce((sum, _, i) => sum + 1 / (i + 1), 0);
  const got = adjusted(list);
  for (const [at, own] of list.entries()) {
    const [smaller, larger] = [list.filter((each) => each <= own), list.filter((each) => each >= own)];
    const want = {
      bonferroni: Math.min(1, n * own),
      holm: most(smaller.map((each) => (n - below(each)) * each)),
      hochberg: least(larger.map((each) => (n - upTo(each) + 1) * each)),
      benjamini_hochberg: least(larger.map((each) => (n * each) / upTo(each))),
      benjamini_yekutieli: least(larger.map((each) => (harmonic * n * each) / upTo(each))),
    };
    for (const way of ways) closeTo(got[way]![at]!, want[way], 1e-12, { scale: 1 });
  }
});

law(
  "no value falls below its p or changes the order; step-up is below step-down, all below Bonferroni",
  [p],
  (list) => {
    const got = adjusted(list);
    const order = list.map((_, at) => at).sort((a, b) => list[a]! - list[b]!);
    for (const way of ways) {
      expect(list.every((each, at) => got[way]![at]! >= each * (1 - 1e-12) && got[way]![at]! <= 1)).toBe(true);
      expect(order.every((at, i) => i === 0 || got[way]![at]! >= got[way]![order[i - 1]!]! - 1e-15)).toBe(true);
    }
    for (const at of list.keys()) {
      expect(got.hochberg![at]!).toBeLessThanOrEqual(got.holm![at]! + 1e-15);
      expect(got.holm![at]!).toBeLessThanOrEqual(got.bonferroni![at]! + 1e-15);
      expect(got.benjamini_hochberg![at]!).toBeLessThanOrEqual(got.benjamini_yekutieli![at]! + 1e-15);
    }
  },
);

law("a missing value keeps its place and does not count; questions that are not given count like ones", [p], (list) => {
  const holed = adjusted([Number.NaN, ...list, Number.NaN]);
  const more = adjusted(list, list.length + 2);
  const ones = adjusted([...list, 1, 1]);
  for (const way of ways) {
    expect(holed[way]).toEqual([null, ...adjusted(list)[way]!, null]);
    for (const at of list.keys()) closeTo(more[way]![at]!, ones[way]![at]!, 1e-12, { scale: 1 });
  }
});

law("what is no p is declined", [fc.constantFrom<unknown>([1.2], [-0.1], [Number.NaN], [], "p", [0.1, "x"])], (given) =>
  expect(refusalOf(pAdjust, { p: given })).not.toBeNull(),
);
