import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { leastAbsolute } from "../../../../src/core/questions/methods/least-absolute.ts";
import { closeTo } from "../../../support/close-to.ts";
import { law } from "../../../support/law.ts";

type Answer = {
  readonly coef: readonly number[];
  readonly loss: number;
  readonly sum_abs: number;
  readonly unique: boolean;
};
function planeOf(inputs: Readonly<Record<string, unknown>>): Answer | null {
  const outcome = leastAbsolute.run(inputs);
  return outcome.ok ? (outcome.value as unknown as Answer) : null;
}
const refusalOf = (inputs: Readonly<Record<string, unknown>>) => {
  const outcome = leastAbsolute.run(inputs);
  return outcome.ok ? null : outcome.refusal.code;
};
const lossOf = (r: number, tau: number) => (r > 0 ? tau * r : (tau - 1) * r);

/** The least loss of a line through any two records, tried one after another. */
function leastOfAllPairs(x: readonly number[], y: readonly number[], tau: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let a = 0; a < x.length; a++)
    for (let b = a + 1; b < x.length; b++) {
      if (x[a] === x[b]) continue;
      const slope = (y[b]! - y[a]!) / (x[b]! - x[a]!);
      const loss = x.reduce((sum, value, i) => sum + lossOf(y[i]! - y[a]! - slope * (value - x[a]!), tau), 0);
      least = Math.min(least, loss);
    }
  return least;
}

const readings = fc.integer({ min: -30, max: 30 }).map((whole) => whole / 4);
const records = fc.array(fc.tuple(readings, readings, readings), { minLength: 5, maxLength: 18 });
const taus = fc.constantFrom(0.1, 0.25, 0.5, 0.6, 0.9);
const columnsOf = (rows: readonly (readonly number[])[]) =>
  [0, 1, 2].map((at) => rows.map((row) => row[at]!)) as [number[], number[], number[]];

describe("median and quantile regression", () => {
  law("no line through two records is better, ties or not", [records, taus], (rows, tau) => {
    const [x, , y] = columnsOf(rows);
    const plane = planeOf({ x, y, tau });
    if (!plane) return;
    const least = leastOfAllPairs(x, y, tau);
    closeTo(plane.loss, least, 1e-12, { scale: least + 1 });
    const [constant, slope] = plane.coef as [number, number];
    const own = x.reduce((sum, value, i) => sum + lossOf(y[i]! - constant - slope * value, tau), 0);
    closeTo(own, plane.loss, 1e-12, { scale: least + 1 });
  });

  law("at most tau of the records lie below the plane, at most 1 - tau above", [records, taus], (rows, tau) => {
    const [x1, x2, y] = columnsOf(rows);
    const plane = planeOf({ x1, x2, y, tau });
    if (!plane) return;
    const residuals = y.map((value, i) => value - plane.coef[0]! - plane.coef[1]! * x1[i]! - plane.coef[2]! * x2[i]!);
    expect(residuals.filter((r) => r < -1e-9).length).toBeLessThanOrEqual(tau * y.length + 1e-9);
    expect(residuals.filter((r) => r > 1e-9).length).toBeLessThanOrEqual((1 - tau) * y.length + 1e-9);
  });

  law(
    "a plane added to y is added to the answer; another unit of x or y, or y turned over, does what it must",
    [records, taus, readings],
    (rows, tau, slope) => {
      const [x1, x2, y] = columnsOf(rows);
      const plane = planeOf({ x1, x2, y, tau });
      if (!plane?.unique) return;
      const scale = Math.max(...plane.coef.map(Math.abs), Math.abs(slope), 1);
      const leaning = planeOf({ x1: x1.map((v) => 8 * v), x2, y: y.map((v, i) => 3 + 2 * v + slope * x2[i]!), tau });
      const [b0, b1, b2] = plane.coef as [number, number, number];
      [3 + 2 * b0, b1 / 4, 2 * b2 + slope].forEach((want, j) => {
        closeTo(leaning!.coef[j]!, want, 1e-10, { scale });
      });
      const turned = planeOf({ x1, x2, y: y.map((v) => -v), tau: 1 - tau });
      plane.coef.forEach((want, j) => {
        closeTo(turned!.coef[j]!, -want, 1e-10, { scale });
      });
    },
  );

  it("says when planes tie, sets missing records aside, and goes through zero when asked", () => {
    expect(planeOf({ x: [0, 0, 1, 1], y: [0, 1, 0, 1] })?.unique).toBe(false);
    const plane = planeOf({ x: [1, 2, 3, 4, 5], y: [1, 2, 3, 4, 50] });
    expect(plane).toMatchObject({ unique: true, sum_abs: 45 });
    plane?.coef.forEach((b, j) => {
      closeTo(b, [0, 1][j]!, 1e-14, { scale: 1 });
    });
    expect(planeOf({ x: [1, 2, 3, 4, 5, Number.NaN], y: [1, 2, 3, 4, 50, 7] })).toEqual({ ...plane, set_aside: 1 });
    expect(planeOf({ x: [1, 2, 2, 4], y: [2, 4, 4, 9], constant: false })?.coef).toEqual([2]);
  });

  it("declines what it cannot fit", () => {
    expect(refusalOf({ x: [2, 2, 2, 2], y: [1, 2, 3, 4] })).toBe("no-spread");
    expect(refusalOf({ x1: [1, 2, 3, 4, 5], x2: [3, 5, 7, 9, 11], y: [1, 4, 2, 8, 5] })).toBe("collinear");
    expect(refusalOf({ x: [1, 2, 3], y: [1, 2, 4], tau: 1 })).toBe("out-of-domain");
    expect(refusalOf({ x: [1], y: [1] })).toBe("too-few-records");
    expect(refusalOf({ x: [1, 2, 3], y: [1, Number.POSITIVE_INFINITY, 4] })).toBe("not-finite");
  });
});
