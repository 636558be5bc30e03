import fc from "fast-check";
import { expect, it } from "vitest";
import { kappa } from "../../../../src/core/questions/methods/kappa.ts";
import { closeTo } from "../../../support/close-to.ts";
import { fieldsOf, refusalOf } from "../../../support/fields-of.ts";
import { law } from "../../../support/law.ts";

const levels = [1, 2, 3, 4, 5];
const pair = fc.tuple(fc.constantFrom(...levels), fc.constantFrom(...levels));
const pairs = fc
  .array(pair, { minLength: 4, maxLength: 40 })
  .filter(
    (list) => refusalOf(kappa, { rater_a: list.map(([a]) => a), rater_b: list.map(([, b]) => b), levels }) === null,
  );
const columns = (list: readonly (readonly [number, number])[]) => ({
  rater_a: list.map(([a]) => a),
  rater_b: list.map(([, b]) => b),
  levels,
});
const names = [
  "agreement",
  "kappa",
  "kappa_linear",
  "kappa_quadratic",
  "kappa_se",
  "kappa_linear_se",
  "kappa_quadratic_se",
];

law("kappa is one less the mean disagreement over its mean for every pair of pieces", [pairs], (list) => {
  const got = fieldsOf(kappa, columns(list));
  const by = (unlike: (a: number, b: number) => number) => {
    const seen = list.reduce((sum, [a, b]) => sum + unlike(a, b), 0) / list.length;
    const chance =
      list.reduce((sum, [a]) => sum + list.reduce((inner, [, b]) => inner + unlike(a, b), 0), 0) / list.length ** 2;
    return 1 - seen / chance;
  };
  closeTo(
    got.kappa!,
    by((a, b) => Number(a !== b)),
    1e-10,
    { scale: 1 },
  );
  closeTo(
    got.kappa_linear!,
    by((a, b) => Math.abs(a - b)),
    1e-10,
    { scale: 1 },
  );
  closeTo(
    got.kappa_quadratic!,
    by((a, b) => (a - b) ** 2),
    1e-10,
    { scale: 1 },
  );
});

law(
  "changing the graders about, turning the scale, words for grades and an ungraded piece change nothing",
  [pairs],
  (list) => {
    const one = columns(list);
    const words = ["dull", "plain", "fair", "good", "best"];
    const word = (grade: number) => words[grade - 1]!;
    const others = [
      { ...one, rater_a: one.rater_b, rater_b: one.rater_a },
      { ...one, rater_a: one.rater_a.map((g) => 6 - g), rater_b: one.rater_b.map((g) => 6 - g) },
      { rater_a: one.rater_a.map(word), rater_b: one.rater_b.map(word), levels: words },
      { ...one, rater_a: [...one.rater_a, 3], rater_b: [...one.rater_b, null] },
    ];
    const got = fieldsOf(kappa, one);
    for (const other of others)
      for (const name of names) closeTo(fieldsOf(kappa, other)[name]!, got[name]!, 1e-9, { scale: 1 });
  },
);

law(
  "with two grades all weights are one kappa",
  [fc.array(fc.tuple(fc.constantFrom(1, 2), fc.constantFrom(1, 2)), { minLength: 4, maxLength: 30 })],
  (list) => {
    const given = { ...columns(list), levels: [1, 2] };
    if (refusalOf(kappa, given) !== null) return;
    const got = fieldsOf(kappa, given);
    closeTo(got.kappa_linear!, got.kappa!, 1e-12, { scale: 1 });
    closeTo(got.kappa_quadratic!, got.kappa!, 1e-12, { scale: 1 });
  },
);

it("says nothing of weights where words have no order", () =>
  expect(fieldsOf(kappa, { rater_a: ["a", "b", "a"], rater_b: ["a", "b", "b"] })).toMatchObject({
    n: 3,
    kappa_linear: null,
    kappa_quadratic: null,
  }));

it.each([
  [{ rater_a: [3, 3, 3, 3, 3, 3], rater_b: [3, 3, 3, 3, 3, 3], levels }, "no-spread"],
  [{ rater_a: [1, 2], rater_b: [1] }, "out-of-domain"],
  [{ rater_a: [1, 2, 9], rater_b: [1, 2, 3], levels }, "out-of-domain"],
  [{ rater_a: [1, null], rater_b: [null, 2] }, "too-few-records"],
  [{ rater_a: 3, rater_b: [1] }, "out-of-domain"],
])("declines %j", (given, code) => expect(refusalOf(kappa, given)).toBe(code));
