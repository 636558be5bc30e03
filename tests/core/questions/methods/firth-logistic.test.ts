import fc from "fast-check";
import { expect, it } from "vitest";
import { firthLogistic } from "../../../../src/core/questions/methods/firth-logistic.ts";
import { closeTo } from "../../../support/close-to.ts";
import { fieldsOf, refusalOf } from "../../../support/fields-of.ts";
import { law } from "../../../support/law.ts";

const listOf = (value: unknown) => value as number[];
const times = (count: number, value: number) => new Array<number>(count).fill(value);
const count = fc.integer({ min: 0, max: 12 });

// Firth (1993), section 3: in a saturated model the penalty adds one half to each cell.
law("a table of two by two is one with half a record more in each cell", [count, count, count, count], (a, b, c, d) => {
  fc.pre(a + b > 0 && c + d > 0 && a + c > 0 && b + d > 0 && a + b + c + d > 2);
  const found = fieldsOf(firthLogistic, {
    y: [...times(a, 1), ...times(b, 0), ...times(c, 1), ...times(d, 0)],
    x1: [...times(a + b, 0), ...times(c + d, 1)],
  });
  const constant = Math.log((a + 0.5) / (b + 0.5));
  const [first = Number.NaN, slope = Number.NaN] = listOf(found.coef);
  closeTo(first, constant, 1e-8, { scale: 1 });
  closeTo(slope, Math.log((c + 0.5) / (d + 0.5)) - constant, 1e-8, { scale: 1 });
});

const y = [1, 1, 0, 0, 0, 1, 1, 0, 0, 0, 0, 1];
const x1 = [-0.475, 0.029, -0.167, -0.508, -2.138, 1.032, 0.742, -1.352, -0.185, -0.244, 0.856, 1.13];
const x2 = [0.979, 0.962, -0.152, 0, 1.588, -0.715, 1.755, 1.256, -0.366, -1.653, -1.565, -0.118];

it("yes and no exchanged turns the signs and the intervals round", () => {
  const plain = fieldsOf(firthLogistic, { y, x1, x2 });
  const other = fieldsOf(firthLogistic, { y: y.map((v) => 1 - v), x1, x2 });
  listOf(plain.coef).forEach((value, j) => {
    closeTo(listOf(other.coef)[j] ?? Number.NaN, -value, 1e-8);
    closeTo(listOf(other.ci95_low_profile)[j] ?? Number.NaN, -(listOf(plain.ci95_high_profile)[j] ?? 0), 1e-6);
  });
});

// R 4.2.2: Newton's steps on the penalized likelihood; profile ends by uniroot over optim, the best of 40 starts.
it("nearly separated records have both ends of their intervals", () => {
  const found = fieldsOf(firthLogistic, { y, x1, x2 });
  [-0.305508350569, 3.678209933508, 3.110770646476].forEach((value, j) => {
    closeTo(listOf(found.coef)[j] ?? Number.NaN, value, 1e-8);
  });
  [-2.877224051841, 0.720310411222, 0.361275059131].forEach((value, j) => {
    closeTo(listOf(found.ci95_low_profile)[j] ?? Number.NaN, value, 1e-7);
  });
  [2.629036677244, 13.39101377, 11.452688519345].forEach((value, j) => {
    closeTo(listOf(found.ci95_high_profile)[j] ?? Number.NaN, value, 1e-5);
  });
});

it("refuses what is no yes or no, and one answer alone", () => {
  expect(refusalOf(firthLogistic, { y: y.map((v) => v + 1), x1 })).toBe("out-of-domain");
  expect(refusalOf(firthLogistic, { y: times(12, 1), x1 })).toBe("one-group");
  expect(refusalOf(firthLogistic, { y, x1: times(12, 3) })).toBe("no-spread");
  expect(refusalOf(firthLogistic, { y, x1, x2: x1.map((v) => 2 * v + 1) })).toBe("collinear");
});
