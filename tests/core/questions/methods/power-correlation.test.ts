import fc from "fast-check";
import { expect, it } from "vitest";
import { generatorFromSeed, normalQuantile, tQuantile } from "../../../../src/core/numerics/index.ts";
import { powerCorrelation } from "../../../../src/core/questions/methods/power-correlation.ts";
import { powerOfSlope } from "../../../../src/core/questions/methods/power-of-slope.ts";
import { closeTo } from "../../../support/close-to.ts";
import { fieldsOf, refusalOf } from "../../../support/fields-of.ts";
import { law } from "../../../support/law.ts";

// R 4.2.2, pwr 1.3.0::pwr.r.test(20, 0.4, alternative = …) and its n for a power of 0.8 (to its root finder's 1e-4).
it("looks on one side as R does", () => {
  const got = fieldsOf(powerCorrelation, { r: 0.4, n: 20, alternative: "greater" });
  closeTo(got.power!, 0.559085746162233, 1e-8);
  closeTo(got.n_for_target!, 36.5099452606605, 1e-4);
  closeTo(fieldsOf(powerCorrelation, { r: 0.4, n: 20, alternative: "less" }).power!, 0.00029996158170012, 1e-8);
});

it("is near how often drawn pairs have a correlation beyond the critical one", () => {
  const [r, n, rounds, stream] = [0.5, 20, 20_000, generatorFromSeed(11)];
  const draw = () => normalQuantile(stream.next() || 0.5);
  const t = tQuantile(0.975, n - 2);
  let seen = 0;
  for (let round = 0; round < rounds; round++) {
    let [sx, sy, xx, yy, xy] = [0, 0, 0, 0, 0];
    for (let i = 0; i < n; i++) {
      const x = draw();
      const y = r * x + Math.sqrt(1 - r * r) * draw();
      [sx, sy, xx, yy, xy] = [sx + x, sy + y, xx + x * x, yy + y * y, xy + x * y];
    }
    const found = (xy - (sx * sy) / n) / Math.sqrt((xx - (sx * sx) / n) * (yy - (sy * sy) / n));
    if (Math.abs(found) > t / Math.sqrt(t * t + n - 2)) seen++;
  }
  const { power } = fieldsOf(powerCorrelation, { r, n });
  // The formula itself is an approximation, good to about one in a hundred here.
  expect(Math.abs(seen / rounds - power!)).toBeLessThan(4 * Math.sqrt((power! * (1 - power!)) / rounds) + 0.01);
});

// Below about ten records and a correlation of 0.2 the formula itself, an approximation, bends by a few thousandths.
const correlation = fc.integer({ min: 20, max: 95 }).map((each) => each / 100);
law(
  "power rises with the records and the correlation, and its sign is all one",
  [correlation, fc.integer({ min: 10, max: 200 })],
  (r, n) => {
    const power = (more: object) => fieldsOf(powerCorrelation, { r, n, ...more }).power!;
    expect(power({ n: n + 1 })).toBeGreaterThanOrEqual(power({}) - 1e-12);
    expect(power({ r: r + 0.01 })).toBeGreaterThanOrEqual(power({}) - 1e-12);
    closeTo(power({ r: -r }), power({}), 1e-12);
    const { n_for_target } = fieldsOf(powerCorrelation, { r, n });
    if (n_for_target! > 4) closeTo(power({ n: n_for_target }), 0.8, 1e-8);
  },
);

it.each([
  [{ r: 1, n: 20 }, "out-of-domain"],
  [{ r: 0.5, n: 3 }, "out-of-domain"],
  [{ r: 0.5, n: 20, target_power: 1 }, "out-of-domain"],
])("declines %j", (inputs, code) => expect(refusalOf(powerCorrelation, inputs)).toBe(code));

const x = [9.8, 11.2, 12, 12.9, 10.4, 13.5, 11.7, 12.4];
const y = [2.47, 2.44, 2.46, 2.36, 2.49, 2.41, 2.38, 2.45];
it("a slope takes more records at a stricter level or for more power, and its scale is all one", () => {
  const needed = (more: object) => fieldsOf(powerOfSlope, { x, y, ...more }).n_needed!;
  expect(needed({ alpha: 0.01 })).toBeGreaterThan(needed({}));
  expect(needed({ target_power: 0.95 })).toBeGreaterThan(needed({}));
  expect(needed({ x: x.map((each) => each / 25.4), y: y.map((each) => 100 - 3 * each) })).toBe(needed({}));
  expect(refusalOf(powerOfSlope, { x, y: x })).toBe("perfect-fit");
  expect(refusalOf(powerOfSlope, { x, y, alpha: 2 })).toBe("out-of-domain");
});
