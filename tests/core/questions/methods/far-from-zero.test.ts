// A common offset of the readings changes no spread, no slope and no difference: figures beside those of the readings without it.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Method, MethodInputs } from "../../../../src/core/base/index.ts";
import { decimalsFromFirst } from "../../../../src/core/numerics/index.ts";
import { linearFit, ones } from "../../../../src/core/questions/fits/linear-fit.ts";
import { analysisOfCovariance } from "../../../../src/core/questions/methods/analysis-of-covariance.ts";
import { anovaNist } from "../../../../src/core/questions/methods/anova-nist.ts";
import { descriptiveNist } from "../../../../src/core/questions/methods/descriptive-nist.ts";
import { hedgesG } from "../../../../src/core/questions/methods/hedges-g.ts";
import { influence } from "../../../../src/core/questions/methods/influence.ts";
import { welchT } from "../../../../src/core/questions/methods/welch-t.ts";
import { equivalence } from "../../../../src/core/verdicts/methods/equivalence.ts";
import { closeTo } from "../../../support/close-to.ts";
import { law } from "../../../support/law.ts";

type Fields = Readonly<Record<string, number | readonly number[]>>;
const of = (method: Method, inputs: MethodInputs): Fields => {
  const made = method.run(inputs);
  if (!made.ok) throw new Error(made.refusal.code);
  return made.value as Fields;
};
const same = (got: Fields, wanted: Fields, names: readonly string[], relative: number) => {
  for (const name of names)
    [wanted[name]].flat().forEach((value, at) => {
      closeTo([got[name]].flat()[at] as number, value as number, relative, { scale: 1e-3 });
    });
};
const far = (list: readonly number[], offset: number) => list.map((value) => value + offset);
/** The decimal `whole.tenths` of an offset far from zero: what a file says, and what reading it as a double rounds. */
const written = (tenths: readonly number[], offset: string) => tenths.map((digit) => Number(`${offset}.${digit}`));

describe("readings far from zero", () => {
  law(
    "of 13 figures before the point and one behind it are what they are without the 13: certified sets are written so",
    [fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 4, maxLength: 12 })],
    (tenths) => {
      if (new Set(tenths).size < 2) return;
      const group = tenths.map((_, at) => String(at % 2));
      const [near, away] = [tenths.map((digit) => digit / 10), written(tenths, "1000000000000")];
      same(of(descriptiveNist, { x: away }), of(descriptiveNist, { x: near }), ["sd", "lag1_autocorrelation"], 1e-13);
      const one = anovaNist.run({ value: near, group });
      if (one.ok)
        same(
          of(anovaNist, { value: away, group }),
          of(anovaNist, { value: near, group }),
          ["ss_between", "ss_within", "F", "r2", "sigma"],
          1e-12,
        );
    },
  );
  it("a reading of more figures than are written stands for itself", () =>
    expect([...decimalsFromFirst(Float64Array.of(1, 1 + 2 ** -52))]).toEqual([0, 2 ** -52]));

  const quarters = fc
    .array(fc.integer({ min: -40, max: 40 }), { minLength: 3, maxLength: 9 })
    .map((list) => list.map((q) => q / 4));
  law("differ between groups as near ones do", [quarters, quarters], (a, b) => {
    if (new Set(a).size < 2 || new Set(b).size < 2) return;
    const [near, away] = [
      { a, b },
      { a: far(a, 1e9), b: far(b, 1e9) },
    ];
    same(of(welchT, away), of(welchT, near), ["difference", "t", "p", "ci95_low", "pooled_t"], 1e-12);
    same(of(hedgesG, away), of(hedgesG, near), ["d", "g"], 1e-12);
    same(of(equivalence, { ...away, margin: 1 }), of(equivalence, { ...near, margin: 1 }), ["difference", "p"], 1e-12);
  });
  it("keep slopes within groups and the errors of means", () => {
    const x = [7.25, 8.5, 9.75, 8, 10.25, 11.5, 12, 13.75];
    const y = [2.25, 2, 1.75, 2.25, 2.75, 2.5, 2.5, 2];
    const group = ["a", "a", "a", "a", "b", "b", "b", "b"];
    const near = of(analysisOfCovariance, { x, y, group });
    const away = of(analysisOfCovariance, { x: far(x, 1e6), y: far(y, 1e6), group });
    same(away, near, ["common_slope", "se", "F_interaction", "F_group", "adjusted_se", "sigma"], 1e-11);
    same(away, { adjusted_means: far(near.adjusted_means as readonly number[], 1e6) }, ["adjusted_means"], 1e-15);
  });
});

describe("influence", () => {
  it("of records on five slopes: the fit without a record differs by what is said", () => {
    const x = [
      [1, 2, 4, 3, 7, 5, 9, 6, 8, 2],
      [3, 1, 2, 5, 4, 8, 7, 6, 1, 9],
      [2, 2, 5, 1, 6, 3, 4, 8, 9, 7],
      [1, 5, 2, 6, 3, 9, 1, 2, 8, 4],
      [6, 1, 3, 2, 8, 5, 5, 9, 4, 7],
    ];
    const y = [2.1, 3.4, 1.9, 4.2, 5.5, 4.1, 6.3, 5.2, 3.3, 4.8];
    const inputs = { x: x[0], x2: x[1], x3: x[2], x4: x[3], x5: x[4], y };
    const got = of(influence, inputs);
    // Leverages of a fit with six coefficients sum to six.
    closeTo(
      (got.leverage as readonly number[]).reduce((sum, h) => sum + h, 0),
      6,
      1e-12,
    );
    const columns = [ones(y.length), ...x.map((list) => Float64Array.from(list))];
    const whole = linearFit(columns, Float64Array.from(y));
    y.forEach((_, left) => {
      const kept = (list: ArrayLike<number>) => Float64Array.from(list).filter((_, at) => at !== left);
      const without = linearFit(columns.map(kept), kept(y));
      [4, 5].forEach((slope) => {
        const change = (whole.coefficients[slope] as number) - (without.coefficients[slope] as number);
        const unit = without.sigma * Math.sqrt((whole.inverse[slope] as Float64Array)[slope] as number);
        closeTo((got[`dfbetas_x${slope}`] as readonly number[])[left] as number, change / unit, 1e-9, { scale: 1 });
      });
    });
    for (const name of Object.keys(got)) expect(influence.fields).toHaveProperty(name);
  });
});
