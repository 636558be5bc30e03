// A case whose options say what a method does not do is declined, not answered as if they were not there.
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { methods } from "../../src/notebook/engine/index.ts";
import { statsCaseResult } from "./case-adapter.ts";
import { statsFaults } from "./judged.ts";
import { casesIn } from "./load-cases.ts";
import { columnsOfCsv, type StatsCase } from "./stats-case.ts";

const cases = casesIn(fileURLToPath(new URL("stats/cases", import.meta.url))) as readonly StatsCase[];
const caseOf = (id: string) => cases.find((one) => one.id === id) as StatsCase;
const result = (one: StatsCase) => statsCaseResult(one, methods) ?? {};
const given = (id: string, options: object, data?: object): StatsCase => {
  const one = caseOf(id);
  return { ...one, options: { ...one.options, ...options }, ...(data ? { data: data as StatsCase["data"] } : {}) };
};

describe("options of a case", () => {
  it.each([
    ["kendall-exact8", { weights: [1, 1, 2, 1, 1, 1, 1, 1] }],
    ["kendall-exact8", { ci: "bootstrap with 2000 resamples" }],
    ["hedges-g-tops20", { correction: "approximate 1 - 3/(4 df - 1)" }],
    ["ancova-tops36", { adjusted_means_at: 11 }],
    ["mixed-dyestuff", { criterion: "maximum likelihood" }],
    ["bootstrap-mean5", { statistic: "interquartile range of x" }],
    ["fisher-tea", { midp: true }],
    ["partial-tops30", { given: ["nosuch"] }],
    ["firth-endometrial", { predictors: ["NV", "nosuch"] }],
    ["permutation-within", { block: "nosuch" }],
    ["polr-housing", { weights: "nosuch" }],
    ["york-pearson", { correlated: "r" }],
  ])("of %s that say another method: %j", (id, options) => {
    expect(result(given(id, options))).toMatchObject({ refused: true });
    expect(statsFaults(caseOf(id), result(caseOf(id)))).toEqual([]);
  });
  it("that only remark on the case change nothing", () => {
    const one = given("fisher-tea", { tasting: "eight cups, four of each kind", note: null });
    expect(statsFaults(one, result(one))).toEqual([]);
  });
  it("that name more predictors than the method takes are declined", () => {
    const names = Array.from({ length: 12 }, (_, at) => `q${at}`);
    const list = (shift: number) => Array.from({ length: 20 }, (_, i) => ((i * (shift + 3)) % 17) + shift);
    const data = Object.fromEntries([...names, "y"].map((name, at) => [name, list(at)]));
    for (const id of ["influence-tops12", "robust-se-tops20"])
      expect(result(given(id, { model: `y ~ ${names.join(" + ")}` }, data))).toMatchObject({ refused: true });
  });
});

describe("a model that is not the method's", () => {
  const list = (shift: number) => Array.from({ length: 20 }, (_, i) => ((i * (shift + 3)) % 17) + shift);
  const data = { y: list(1), q: list(2), s: list(3), tree: list(4).map(String) };
  it.each([
    ["influence-tops12", "y ~ q + s", "answered"],
    ["influence-tops12", "y ~ q + I(q^2)", "declined"],
    ["influence-tops12", "y ~ q * s", "declined"],
    ["influence-tops12", "y ~ 0 + q", "declined"],
    ["influence-tops12", "log(y) ~ q", "declined"],
    ["cluster-robust-tops24", "y ~ q - 1", "declined"],
    ["cluster-robust-tops24", "y ~ q + nosuch", "declined"],
    ["kruskal-grades24", "y ~ tree + q", "declined"],
    ["kruskal-grades24", "y ~ tree", "answered"],
    ["theil-sen-tops15", "y ~ q + s", "declined"],
  ])("%s with %s is %s", (id, model, wanted) => {
    const cluster = id.startsWith("cluster") ? { cluster: "tree" } : {};
    const got = result(given(id, { model, ...cluster }, data));
    expect("refused" in got ? "declined" : "answered").toBe(wanted);
  });
  it("inputs of a result in other units than SI are declined, and the units of the answer are not", () => {
    const model = String(caseOf("gum-stiffness").options.model);
    expect(result(given("gum-stiffness", { model: model.replace("SI in", "g and mm in") }))).toMatchObject({
      refused: true,
    });
    expect(result(given("gum-stiffness", { model: model.replace("GPa out", "MPa out") })).value).toBeCloseTo(
      10885.5279,
      3,
    );
  });
  it("effective degrees of freedom are cut or not as the words say", () => {
    const data = { a: 3, u_a: 0.1, b: 5, u_b: 0.2, df_a: 6, df_b: 9 };
    const of = (df: string) => result({ ...given("gum-density", { df }, data), options: { model: "a * b", df } });
    expect(of("Welch-Satterthwaite, truncated").df_used).toBe(14);
    expect(of("Welch-Satterthwaite, not truncated").df_used).toBeCloseTo(14.994, 3);
  });
});

describe("columns under other names", () => {
  it("of a rank correlation, named by options or by neither", () => {
    const one = caseOf("kendall-exact8");
    const { x, y } = one.data;
    for (const [options, data] of [
      [
        { x: "stiff", y: "thick" },
        { piece: y, thick: y, stiff: x },
      ],
      [{}, { stiff: x, thick: y }],
    ] as const) {
      const named = given(one.id, options, data);
      expect(statsFaults(named, result(named))).toEqual([]);
    }
  });
  it("of limits of agreement, in the order of the difference", () => {
    const one = caseOf("bland-altman-1986");
    const { a, b } = one.data;
    const named = given(one.id, { difference: "old - new" }, { new: b, old: a });
    expect(statsFaults(named, result(named))).toEqual([]);
    for (const difference of ["b - a", "b-a", "b minus a"]) {
      const turned = given(one.id, { difference }, { a: b, b: a });
      expect(statsFaults(turned, result(turned))).toEqual([]);
    }
    const plate = (a as readonly number[]).map(String);
    const labelled = { ...one, data: { plate, first: a, second: b }, options: { level: 0.95 } };
    expect(statsFaults(labelled, result(labelled))).toEqual([]);
  });
  it("of two groups that are the same within a margin", () => {
    const one = caseOf("equivalence-yes");
    const named = given(one.id, { difference: "old - new" }, { new: one.data.b, old: one.data.a });
    expect(statsFaults(named, result(named))).toEqual([]);
  });
});

describe("groups and constants", () => {
  it("numerals written as texts stand in the order of the alphabet", () => {
    const one = given("anova-plantgrowth", {}, { group: ["9", "9", "10", "10", "10"], value: [1, 2, 3, 4, 6] });
    expect(result(one)).toMatchObject({ group_order: ["10", "9"], group_n: [3, 2] });
  });
  it("a table's d2 is used where a case says one, and a computed one where it says so", () => {
    const rounded = result(given("individuals-handbook", { d2: 1.128 }));
    expect(rounded.upper).toBe(rounded.upper_d2_1128);
    expect(result(caseOf("individuals-handbook")).upper).not.toBe(rounded.upper);
  });
});

it("a file of quoted cells and NA, as R writes it, is read as what it says", () => {
  const folder = mkdtempSync(join(tmpdir(), "columns-"));
  const path = join(folder, "tops.csv");
  writeFileSync(path, '"wood","h"\n"larch, red",2.5\n"spruce",NA\n"larch, red",3\n');
  const columns = columnsOfCsv(path);
  rmSync(folder, { recursive: true });
  expect(columns).toEqual({ wood: ["larch, red", "spruce", "larch, red"], h: [2.5, null, 3] });
});
