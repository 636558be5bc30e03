// York's line against what it makes least, the other way round, and in the records of Pearson with York's weights (published figures in the reference cases).
import fc from "fast-check";
import { expect, it } from "vitest";
import { york } from "../../../../src/core/questions/methods/york.ts";
import { closeTo } from "../../../support/close-to.ts";
import { fieldsOf, refusalOf } from "../../../support/fields-of.ts";
import { law } from "../../../support/law.ts";

type Points = {
  readonly x: number[];
  readonly y: number[];
  readonly wx: number[];
  readonly wy: number[];
  readonly r: number[];
};
const point = fc.record({
  off: fc.double({ min: -1, max: 1, noNaN: true }),
  ux: fc.double({ min: 0.05, max: 0.3, noNaN: true }),
  uy: fc.double({ min: 0.05, max: 0.6, noNaN: true }),
  r: fc.double({ min: -0.9, max: 0.9, noNaN: true }),
});
const pointsOf = (rows: readonly { off: number; ux: number; uy: number; r: number }[], slope: number): Points => ({
  x: rows.map(({ ux, off }, i) => i + ux * Math.sin(7 * i + off)),
  y: rows.map(({ uy, off }, i) => 2 + slope * i + uy * off),
  wx: rows.map(({ ux }) => ux ** -2),
  wy: rows.map(({ uy }) => uy ** -2),
  r: rows.map(({ r }) => r),
});
/** The sum of squared distances from a line, each in standard deviations of y - a - b x. */
const distance = ({ x, y, wx, wy, r }: Points, a: number, b: number) =>
  x.reduce((sum, each, i) => {
    const [ux, uy] = [wx[i]! ** -0.5, wy[i]! ** -0.5];
    return sum + (y[i]! - a - b * each) ** 2 / (uy * uy + b * b * ux * ux - 2 * b * r[i]! * ux * uy);
  }, 0);

law(
  "no line near it has a smaller sum of squares, which is its chi square",
  [fc.array(point, { minLength: 6, maxLength: 12 }), fc.double({ min: -3, max: 3, noNaN: true })],
  (rows, slope) => {
    const points = pointsOf(rows, slope);
    const { slope: b, intercept: a, chi2 } = fieldsOf(york, points) as Record<string, number>;
    closeTo(distance(points, a!, b!), chi2!, 1e-10, { scale: 1e-6 + chi2! });
    for (const [da, db] of [
      [1e-4, 0],
      [-1e-4, 0],
      [0, 1e-4],
      [0, -1e-4],
    ] as const)
      expect(distance(points, a! + da, b! + db)).toBeGreaterThan(chi2!);
  },
  60,
);
law(
  "x and y the other way round give the same line",
  [fc.array(point, { minLength: 6, maxLength: 12 }), fc.double({ min: 0.5, max: 3, noNaN: true })],
  (rows, slope) => {
    const points = pointsOf(rows, slope);
    const there = fieldsOf(york, points) as Record<string, number>;
    const back = fieldsOf(york, { ...points, x: points.y, y: points.x, wx: points.wy, wy: points.wx }) as Record<
      string,
      number
    >;
    closeTo(back.slope!, 1 / there.slope!, 1e-8);
    closeTo(back.chi2!, there.chi2!, 1e-8, { scale: 1e-6 + there.chi2! });
    closeTo(back.se_slope!, there.se_slope! / there.slope! ** 2, 1e-6);
  },
  60,
);
it("errors that are not tied are the case of r = 0", () => {
  const { r, ...plain } = pointsOf(
    [
      { off: 0.3, ux: 0.1, uy: 0.2, r: 0 },
      { off: -0.8, ux: 0.2, uy: 0.1, r: 0 },
      { off: 0.5, ux: 0.1, uy: 0.3, r: 0 },
      { off: -0.1, ux: 0.2, uy: 0.2, r: 0 },
    ],
    1.4,
  );
  expect(fieldsOf(york, { ...plain, r })).toEqual(fieldsOf(york, plain));
  expect(refusalOf(york, { ...plain, r: [0, 0, 1, 0] })).toBe("out-of-domain");
});
