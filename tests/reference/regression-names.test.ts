// Cases of least squares say the same under other names, with columns beside them that the model does not name, and decline what is no place of theirs.
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { methods } from "../../src/notebook/engine/index.ts";
import { statsCaseResult } from "./case-adapter.ts";
import { statsFaults } from "./judged.ts";
import { casesIn } from "./load-cases.ts";
import type { StatsCase } from "./stats-case.ts";

const cases = casesIn(fileURLToPath(new URL("stats/cases", import.meta.url))) as readonly StatsCase[];
const caseOf = (id: string) => cases.find((one) => one.id === id) as StatsCase;
const given = (id: string, options: object, data: object): StatsCase => {
  const one = caseOf(id);
  return { ...one, options: { ...one.options, ...options }, data: data as StatsCase["data"] };
};
const result = (one: StatsCase) => statsCaseResult(one, methods) ?? {};
const { lv, lg, lh } = caseOf("ols-multiple-trees").data as Record<string, readonly number[]>;
const noise = (lv ?? []).map((_, i) => (i * 7) % 5);

describe("predictors", () => {
  it("are those of the model, whatever the other columns are called", () => {
    const { lg: at1, lh: at2 } = caseOf("ols-multiple-trees").options.predict_at as Record<string, unknown>;
    const options = { model: "y ~ x3 + x1", predict_at: { x1: at2, x3: at1 } };
    const one = given("ols-multiple-trees", options, { y: lv, x1: lh, x2: noise, x3: lg, x4: noise });
    expect(statsFaults(one, result(one))).toEqual([]);
    const robust = (data: object) => result(given("robust-se-tops20", { model: "y ~ x1 + x3" }, data));
    expect(robust({ y: lv, x1: lh, x2: noise, x3: lg })).toEqual(robust({ y: lv, x1: lh, x3: lg }));
    const influence = (data: object) => result(given("influence-tops12", { model: "y ~ x" }, data));
    expect(influence({ y: lv, x: lh, x2: noise })).toEqual(influence({ y: lv, x: lh }));
  });
  it("of the certified sets may have any names", () => {
    const { y, x } = caseOf("nist-lls-norris").data;
    for (const model of ["out ~ size", "out ~ polynomial of degree 1 in size"]) {
      const one = given("nist-lls-norris", { model }, { out: y, size: x });
      expect(statsFaults(one, result(one))).toEqual([]);
    }
  });
  it.each(["r ~ 0 + q", "r ~ q - 1", "r ~ -1 + q", "r ~ q + 0"])("%s has no constant", (model) => {
    const { x, y } = caseOf("ols-origin-balance").data;
    const one = given("ols-origin-balance", { model }, { r: y, q: x });
    expect(statsFaults(one, result(one))).toEqual([]);
  });
  it("weights are the column that an option names", () => {
    const { w, x, y } = caseOf("ols-weighted-zero").data;
    const one = given("ols-weighted-zero", { weights: "counted" }, { x, y, counted: w });
    expect(statsFaults(one, result(one))).toEqual([]);
  });
  it("one place need be no list", () => {
    const one = given("ols-simple-tops12", { predict_at: 12 }, caseOf("ols-simple-tops12").data);
    expect(result(one).fit).toHaveLength(1);
  });
});

describe("what is not done is declined", () => {
  const trees = { lv, lg, lh };
  it.each<[string, object, object]>([
    ["ols-multiple-trees", { predict_at: { lg: [2.5] } }, trees],
    ["ols-multiple-trees", { predict_at: { lg: [2.5], lh: [4], other: [1] } }, trees],
    ["ols-multiple-trees", { predict_at: [2.5] }, trees],
    ["ols-origin-balance", { model: "y ~ x" }, caseOf("ols-origin-balance").data],
    ["welch-t-sleep", { mu: 0.5 }, caseOf("welch-t-sleep").data],
    ["welch-t-sleep", { margin: 0.5 }, caseOf("welch-t-sleep").data],
    ["mann-whitney-exact", { null_value: 0.5 }, caseOf("mann-whitney-exact").data],
    [
      "mcnemar-words",
      {},
      {
        table: [
          [9, 4, 1],
          [3, 5, 2],
          [1, 0, 6],
        ],
      },
    ],
    [
      "rig-linearity-balance",
      { model: "bias = a + b * reference + c * reference^2" },
      caseOf("rig-linearity-balance").data,
    ],
    ["power-law-tops20", { predict_at: [0] }, caseOf("power-law-tops20").data],
    ["pearson-tops14", { rho0: 1 }, caseOf("pearson-tops14").data],
  ])("%s with %j", (id, options, data) => {
    expect(result(given(id, options, data))).toMatchObject({ refused: true });
  });
});
