import fc from "fast-check";
import { expect, it } from "vitest";
import { proportionalOdds } from "../../../../src/core/questions/methods/proportional-odds.ts";
import { closeTo } from "../../../support/close-to.ts";
import { fieldsOf } from "../../../support/fields-of.ts";
import { law } from "../../../support/law.ts";

const listOf = (value: unknown) => value as number[];
const times = (count: number, value: number) => new Array<number>(count).fill(value);
const count = fc.integer({ min: 1, max: 12 });

law(
  "two grades and two groups: the log odds of the table, plain logistic regression",
  [count, count, count, count],
  (a, b, c, d) => {
    const found = fieldsOf(proportionalOdds, {
      y: [...times(a, 1), ...times(b, 2), ...times(c, 1), ...times(d, 2)],
      x1: [...times(a + b, 0), ...times(c + d, 1)],
    });
    closeTo(listOf(found.thresholds)[0] ?? Number.NaN, Math.log(a / b), 1e-8, { scale: 1 });
    closeTo(listOf(found.coef)[0] ?? Number.NaN, Math.log((d * a) / (c * b)), 1e-8, { scale: 1 });
    closeTo(listOf(found.se)[0] ?? Number.NaN, Math.sqrt(1 / a + 1 / b + 1 / c + 1 / d), 1e-7);
  },
);

const y = [1, 2, 1, 3, 2, 4, 3, 2, 4, 1, 3, 4, 2, 3];
const x1 = [0.2, 1.1, 0.7, 1.9, 2.3, 2.8, 1.2, 0.4, 1.5, 1.3, 3.1, 2.2, 1.8, 0.9];

it("grades from the other end turn the slope and the thresholds round", () => {
  const plain = fieldsOf(proportionalOdds, { y, x1 });
  const other = fieldsOf(proportionalOdds, { y: y.map((v) => 5 - v), x1 });
  closeTo(listOf(other.coef)[0] ?? Number.NaN, -(listOf(plain.coef)[0] ?? 0), 1e-8);
  const thresholds = listOf(plain.thresholds);
  listOf(other.thresholds).forEach((value, k) => {
    closeTo(value, -(thresholds[2 - k] ?? Number.NaN), 1e-8);
  });
});

it("a grade that is never given has no threshold", () => {
  const plain = fieldsOf(proportionalOdds, { y, x1 });
  const other = fieldsOf(proportionalOdds, {
    y: y.map((v) => (v > 2 ? v + 1 : v)),
    x1,
    levels: ["1", "2", "3", "4", "5"],
  });
  expect(other.levels).toEqual(["1", "2", "4", "5"]);
  expect(other.thresholds).toEqual(plain.thresholds);
});
