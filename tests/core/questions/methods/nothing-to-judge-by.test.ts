// Records that leave nothing to judge by are declined, each by what is wrong with them, and no rounding is passed off as scatter.
import { describe, expect, it } from "vitest";
import type { Method, MethodInputs } from "../../../../src/core/base/index.ts";
import { analysisOfCovariance } from "../../../../src/core/questions/methods/analysis-of-covariance.ts";
import { clusterRobust } from "../../../../src/core/questions/methods/cluster-robust.ts";
import { concordance } from "../../../../src/core/questions/methods/concordance.ts";
import { distribution } from "../../../../src/core/questions/methods/distribution.ts";
import { influence } from "../../../../src/core/questions/methods/influence.ts";
import { inversePrediction } from "../../../../src/core/questions/methods/inverse-prediction.ts";
import { closeTo } from "../../../support/close-to.ts";

const code = (method: Method, inputs: MethodInputs) => {
  const made = method.run(inputs);
  return made.ok ? "answered" : made.refusal.code;
};
const x = [1, 2, 4, 3, 7, 5];
const y = [2, 1, 5, 3, 6, 8];
const twice = x.map((value) => value / 10);
const same = x.map(() => 5);
const group = ["a", "a", "a", "b", "b", "b"];

describe("declined", () => {
  it.each([
    ["ancova of one height", analysisOfCovariance, { x, y: same, group }, "no-spread"],
    ["ancova of an exact line", analysisOfCovariance, { x, y: twice, group }, "perfect-fit"],
    ["ancova of records with scatter", analysisOfCovariance, { x, y, group }, "answered"],
    ["influence on an exact line", influence, { x, y: twice }, "perfect-fit"],
    ["influence on one height", influence, { x, y: same }, "perfect-fit"],
    ["a calibration line of one reading", inversePrediction, { x, y: same, y0: 5 }, "no-spread"],
    ["two clusters", clusterRobust, { x, y, cluster: group }, "too-few-groups"],
    [
      "a quantity below what squares can say",
      clusterRobust,
      { x: x.map((value) => value * 1e-320), y, cluster: ["a", "a", "b", "b", "c", "c"] },
      "not-finite",
    ],
    [
      "a tail at no place",
      distribution,
      { distribution: "studentized_range", function: ["sf"], x: [Number.NaN], a: [3], b: [5] },
      "out-of-domain",
    ],
  ] as const)("%s", (_, method, inputs, wanted) => expect(code(method, inputs)).toBe(wanted));
});

it("readings that all agree have no standard error of their agreement", () => {
  const made = concordance.run({ x, y: x });
  expect(made.ok && made.value).toMatchObject({ se_z: null, ci95_low: null, ci95_high: null });
});

it("a group of one has no slope to differ from others: degrees of freedom and F as R 4.2.2 has them, anova(lm(y ~ x + g), lm(y ~ x * g))", () => {
  const made = analysisOfCovariance.run({
    x: [1, 2, 3, 5, 2, 4, 5, 7, 3],
    y: [2.1, 2.9, 4.2, 5.8, 1.1, 2.3, 2.2, 3.9, 6],
    group: ["a", "a", "a", "a", "b", "b", "b", "b", "c"],
  });
  const got = (made.ok ? made.value : {}) as Readonly<Record<string, number>>;
  expect(got).toMatchObject({ df1_interaction: 1, df2_interaction: 4 });
  closeTo(got.F_interaction ?? 0, 10.154249967351058, 1e-12);
  closeTo(got.p_interaction ?? 0, 0.0333251219897108, 1e-12);
  closeTo(got.F_group ?? 0, 39.8314506041042, 1e-12);
  expect((got.within_slopes as unknown as readonly (number | null)[])[2]).toBeNull();
});
