import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { generatorFromSeed, normalQuantile, tQuantile } from "../../../../src/core/numerics/index.ts";
import { powerT } from "../../../../src/core/questions/methods/power-t.ts";
import { closeTo } from "../../../support/close-to.ts";
import { fieldsOf, refusalOf } from "../../../support/fields-of.ts";
import { law } from "../../../support/law.ts";

// J. Cohen (1988), Statistical Power Analysis, table 2.4.1, two-sided 0.05, power 0.80: pieces a group. Recalled, not looked up.
it.each([
  [0.2, 393],
  [0.5, 64],
  [0.8, 26],
])("needs for an effect of %d what is printed, %i a group", (difference, pieces) =>
  expect(Math.round(fieldsOf(powerT, { difference, sd: 1 }).n_for_target!)).toBe(pieces),
);

/** How often t passes its critical value in drawn groups that differ by the effect. */
function drawnPower(n1: number, n2: number, effect: number, alpha: number, rounds: number, seed: number): number {
  const stream = generatorFromSeed(seed);
  const group = (n: number, centre: number) =>
    Array.from({ length: n }, () => centre + normalQuantile(stream.next() || 0.5));
  const mean = (x: readonly number[]) => x.reduce((sum, each) => sum + each, 0) / x.length;
  const squares = (x: readonly number[], m: number) => x.reduce((sum, each) => sum + (each - m) ** 2, 0);
  const critical = tQuantile(1 - alpha / 2, n1 + n2 - 2);
  let seen = 0;
  for (let round = 0; round < rounds; round++) {
    const [a, b] = [group(n1, effect), group(n2, 0)];
    const [ma, mb] = [mean(a), mean(b)];
    const pooled = (squares(a, ma) + squares(b, mb)) / (n1 + n2 - 2);
    if (Math.abs(ma - mb) > critical * Math.sqrt(pooled * (1 / n1 + 1 / n2))) seen++;
  }
  return seen / rounds;
}

it.each([
  [6, 6, 1.1, 0.05],
  [3, 3, 0.8, 0.05],
  [5, 14, 0.9, 0.01],
])("for groups of %i and %i and an effect of %d is how often drawn groups differ", (n1, n2, effect, alpha) => {
  const rounds = 20_000;
  const { power } = fieldsOf(powerT, { n1, n2, difference: effect, sd: 1, alpha });
  const error = Math.sqrt((power! * (1 - power!)) / rounds);
  expect(Math.abs(drawnPower(n1, n2, effect, alpha, rounds, 41) - power!)).toBeLessThan(4 * error);
});

// R 4.2.2, stats::power.t.test(strict = TRUE) and, for unlike groups, stats::pt with its noncentrality.
describe("in other designs, as R has it", () => {
  it.each([
    [{ design: "one-sample", n: 9, difference: 0.8 }, 0.559096123628657],
    [{ design: "paired", n: 9, difference: 0.8, alternative: "one-sided" }, 0.707363907889092],
    [{ n1: 7, n2: 15, difference: 0.9 }, 0.464846494884457],
  ])("%j has the power %d", (inputs, power) => closeTo(fieldsOf(powerT, { sd: 1, ...inputs }).power!, power, 1e-8));
  it.each([
    [{ design: "paired", difference: 0.8 }, 18.4462260817713],
    [{ difference: 0.8, alternative: "one-sided" }, 27.4658395758988],
  ])("%j takes %d for a power of 0.9", (inputs, n) =>
    closeTo(fieldsOf(powerT, { sd: 1, target_power: 0.9, ...inputs }).n_for_target!, n, 1e-8),
  );
  it("unlike groups keep their ratio", () => {
    const got = fieldsOf(powerT, { n1: 7, n2: 15, difference: 0.9, sd: 1 });
    closeTo(got.n1_for_target!, 14.8485610516157, 1e-8);
    closeTo(got.n2_for_target! / got.n1_for_target!, 15 / 7, 1e-12);
  });
});

const size = fc.integer({ min: 2, max: 60 });
const effect = fc.integer({ min: 1, max: 30 }).map((each) => each / 10);

law("power rises with the pieces, the effect and the level", [size, effect], (n_per_group, difference) => {
  const power = (more: object) => fieldsOf(powerT, { n_per_group, difference, sd: 1, alpha: 0.02, ...more }).power!;
  const now = power({});
  expect(power({ n_per_group: n_per_group + 1 })).toBeGreaterThanOrEqual(now * (1 - 1e-9));
  expect(power({ difference: difference + 0.1 })).toBeGreaterThanOrEqual(now * (1 - 1e-9));
  expect(power({ alpha: 0.03 })).toBeGreaterThanOrEqual(now * (1 - 1e-9));
  expect(now).toBeGreaterThan(0.02);
});

law(
  "the sign of the difference, its unit and the order of the groups change nothing",
  [size, size, effect],
  (n1, n2, difference) => {
    const power = (more: object) => fieldsOf(powerT, { n1, n2, difference, sd: 1, ...more }).power!;
    closeTo(power({ difference: -difference }), power({}), 1e-12);
    closeTo(power({ difference: difference * 25.4, sd: 25.4 }), power({}), 1e-12);
    closeTo(power({ n1: n2, n2: n1 }), power({}), 1e-12);
    closeTo(power({ alternative: "greater" }), power({ alternative: "less", difference: -difference }), 1e-12);
  },
);

law(
  "the number of pieces for a power has that power",
  [effect, fc.constantFrom(0.5, 0.8, 0.95)],
  (difference, target_power) => {
    const { n_for_target, n_for_target_ceiling } = fieldsOf(powerT, { difference, sd: 1, target_power });
    if (n_for_target! > 2)
      closeTo(fieldsOf(powerT, { n_per_group: n_for_target, difference, sd: 1 }).power!, target_power, 1e-8);
    expect(n_for_target_ceiling! - n_for_target!).toBeLessThan(1);
  },
);

it("has the level for its power where there is no difference, and no number of pieces will do", () =>
  expect(fieldsOf(powerT, { n_per_group: 9, difference: 0, sd: 1 })).toMatchObject({
    n_for_target: null,
    more_per_group: null,
  }));

it.each([
  [{ n_per_group: 1, difference: 1, sd: 1 }, "out-of-domain"],
  [{ n_per_group: 5, difference: 1, sd: 0 }, "out-of-domain"],
  [{ n_per_group: 5, difference: Number.NaN, sd: 1 }, "out-of-domain"],
  [{ n_per_group: 5, difference: 1, sd: 1, alpha: 0 }, "out-of-domain"],
  [{ n1: 5, difference: 1, sd: 1 }, "input-missing"],
  [{ design: "paired", n1: 5, n2: 6, difference: 1, sd: 1 }, "out-of-domain"],
])("declines %j", (inputs, code) => expect(refusalOf(powerT, inputs)).toBe(code));
