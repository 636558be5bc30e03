import fc from "fast-check";
import { expect, it } from "vitest";
import { binomialTest } from "../../../../src/core/questions/methods/binomial-test.ts";
import { mcnemar } from "../../../../src/core/questions/methods/mcnemar.ts";
import { closeTo } from "../../../support/close-to.ts";
import { fieldsOf, refusalOf } from "../../../support/fields-of.ts";
import { law } from "../../../support/law.ts";

function choose(n: number, k: number): bigint {
  let result = 1n;
  for (let i = 1; i <= k; i++) result = (result * BigInt(n - k + i)) / BigInt(i);
  return result;
}

const trials = fc.integer({ min: 1, max: 60 }).chain((n) => fc.tuple(fc.integer({ min: 0, max: n }), fc.constant(n)));
const percent = fc.integer({ min: 1, max: 99 });

law("p is the direct sum in whole numbers, for a base rate in hundredths", [trials, percent], ([k, n], hundredths) => {
  const weight = (x: number) =>
    choose(n, x) * BigInt(hundredths) ** BigInt(x) * BigInt(100 - hundredths) ** BigInt(n - x);
  let [twoSided, greater, less] = [0n, 0n, 0n];
  for (let x = 0; x <= n; x++) {
    if (weight(x) <= weight(k)) twoSided += weight(x);
    if (x >= k) greater += weight(x);
    if (x <= k) less += weight(x);
  }
  const share = (part: bigint) => Number((part * 10n ** 60n) / 100n ** BigInt(n)) / 1e60;
  const got = fieldsOf(binomialTest, { k, n, base_rate: hundredths / 100 });
  for (const [name, value] of [
    ["p_two_sided", twoSided],
    ["p_greater", greater],
    ["p_less", less],
  ] as const)
    if (share(value) > 1e-40) closeTo(got[name]!, share(value), 1e-10);
});

law("what holds k times fails n - k times: the sides change places", [trials, percent], ([k, n], hundredths) => {
  const one = fieldsOf(binomialTest, { k, n, base_rate: hundredths / 100 });
  const other = fieldsOf(binomialTest, { k: n - k, n, base_rate: (100 - hundredths) / 100 });
  closeTo(other.p_two_sided!, one.p_two_sided!, 1e-9);
  closeTo(other.p_less!, one.p_greater!, 1e-9);
  closeTo(other.ci95_low!, 1 - one.ci95_high!, 1e-9, { scale: 1 });
});

law("McNemar's exact p is this test at one half, and the two words may change places", [trials], ([k, n]) => {
  const paired = fieldsOf(mcnemar, { only_a: k, only_b: n - k });
  closeTo(paired.p_exact!, fieldsOf(binomialTest, { k, n }).p_two_sided!, 1e-11);
  expect(paired.p_mid!).toBeLessThan(paired.p_exact!);
  expect(paired.p_continuity!).toBeGreaterThanOrEqual(paired.p!);
  for (const [name, value] of Object.entries(fieldsOf(mcnemar, { only_a: n - k, only_b: k })))
    if (typeof value === "number") closeTo(value, paired[name]!, 1e-12, { scale: 1 });
});

// R 4.2.2, stats::binom.test(14, 18, 0.62, alternative = "less", conf.level = 0.9).
it("leaves the interval open below where it looks for less", () => {
  const got = fieldsOf(binomialTest, { k: 14, n: 18, base_rate: 0.62, alternative: "less", level: 0.9 });
  closeTo(got.ci95_high!, 0.899359004880597, 1e-11);
  expect([got.ci95_low, got.p]).toEqual([0, got.p_less]);
});

it.each([
  [{ k: 1, n: 0 }, "too-few-records"],
  [{ k: 4, n: 3 }, "out-of-domain"],
  [{ k: 1.5, n: 3 }, "out-of-domain"],
  [{ k: -1, n: 3 }, "out-of-domain"],
  [{ k: Number.NaN, n: 3 }, "out-of-domain"],
  [{ k: 1, n: 3, base_rate: 1.2 }, "out-of-domain"],
  [{ k: 1, n: 3, level: 1 }, "out-of-domain"],
])("declines %j", (inputs, code) => expect(refusalOf(binomialTest, inputs)).toBe(code));

it("says one for words that never part, and withholds their chi-square", () => {
  expect(fieldsOf(mcnemar, { both: 5, only_a: 0, only_b: 0, neither: 4 })).toMatchObject({ p_exact: 1, chi2: null });
  expect(refusalOf(mcnemar, { both: 0, only_a: 0, only_b: 0, neither: 0 })).toBe("too-few-records");
});
