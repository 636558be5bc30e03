// Records that leave nothing to judge by are declined, each by what is wrong with them, and no rounding is passed off as scatter.
import { describe, expect, it } from "vitest";
import type { Method, MethodInputs } from "../../../../src/core/base/index.ts";
import { analysisOfCovariance } from "../../../../src/core/questions/methods/analysis-of-covariance.ts";
import { clusterRobust } from "../../../../src/core/questions/methods/cluster-robust.ts";
import { concordance } from "../../../../src/core/questions/methods/concordance.ts";
import { distribution } from "../../../../src/core/questions/methods/distribution.ts";
import { influence } from "../../../../src/core/questions/methods/influence.ts";
import { inversePrediction } from "../../../../src/core/questions/methods/inverse-prediction.ts";

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
