// A whole notebook's methods against R on the same invented tables of 30 and 300 tops: R 4.2.2, MASS, robustbase, lme4 (stats/results).
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { closeTo } from "../support/close-to.ts";
import { notebookSteps, topsFromCsv } from "./notebook-steps.ts";

type InR = Readonly<Record<string, Readonly<Record<string, number | readonly number[]>>>>;

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));
/** step -> field in R -> field of the method, and how near: 1e-8 for closed forms, 1e-5 for REML and MM, 1e-4 of the largest for R's ordered logit, which stops early. */
const compared: Readonly<
  Record<string, readonly (readonly [step: string, inR: string, ours: string, near: number])[]>
> = {
  ols: [
    ["ols", "coef", "coef", 1e-8],
    ["ols", "se", "se", 1e-8],
    ["ols", "p", "p", 1e-8],
    ["ols", "r2", "r2", 1e-8],
    ["ols", "sigma", "sigma", 1e-8],
  ],
  multiple: [
    ["multiple", "coef", "coef", 1e-8],
    ["multiple", "se", "se", 1e-8],
    ["multiple", "r2", "r2", 1e-8],
  ],
  robust: [
    ["robust", "huber", "huber_coef", 1e-7],
    ["robust", "huber_scale", "huber_scale", 1e-7],
    ["robust", "mm", "mm_coef", 1e-5],
    ["robust", "mm_scale", "mm_scale", 1e-5],
  ],
  theil_sen: [
    ["theil_sen", "slope", "slope", 1e-8],
    ["theil_sen", "intercept", "intercept", 1e-8],
  ],
  ancova: [
    ["ancova", "common_slope", "common_slope", 1e-8],
    ["ancova", "se", "se", 1e-8],
    ["ancova", "F_interaction", "F_interaction", 1e-8],
    ["ancova", "p_interaction", "p_interaction", 1e-8],
  ],
  mixed: [
    ["mixed", "coef", "coef", 1e-5],
    ["mixed", "se", "se", 1e-5],
    ["mixed", "sd_tree", "sd_between", 1e-4],
    ["mixed", "sd_within", "sd_within", 1e-4],
    ["mixed", "loglik_reml", "loglik_reml", 1e-5],
  ],
  welch: [
    ["welch", "F", "welch_F", 1e-8],
    ["welch", "df2", "welch_df2", 1e-8],
  ],
  pairs: [["welch", "difference", "difference", 1e-8]],
  spearman: [
    ["spearman", "rho", "rho", 1e-8],
    ["spearman", "p", "p_t", 1e-8],
  ],
  kendall: [
    ["kendall", "tau_b", "tau_b", 1e-8],
    ["kendall", "p", "p_normal", 1e-8],
  ],
  polr: [
    ["polr", "coef", "coef", 1e-4],
    ["polr", "se", "se", 1e-4],
    ["polr", "thresholds", "thresholds", 1e-4],
    ["polr", "deviance", "deviance", 1e-8],
  ],
  permutation: [["permutation", "statistic", "statistic", 1e-8]],
  bootstrap: [
    ["bootstrap", "estimate", "estimate", 1e-8],
    ["bootstrap", "acceleration", "acceleration", 1e-8],
    ["bootstrap", "se", "se", 0.03],
  ],
};

describe.each([30, 300])("%i tops", (rows) => {
  const tops = topsFromCsv(here(`stats/data/tops-${rows}.csv`));
  const inR = JSON.parse(readFileSync(here(`stats/results/notebook-${rows}.json`), "utf8")).results as InR;
  const fields = new Map<string, Readonly<Record<string, unknown>>>();
  const fieldsOf = (step: string) => {
    const known = fields.get(step) ?? notebookSteps[step]?.(tops) ?? {};
    fields.set(step, known);
    return known;
  };
  it.each(Object.entries(compared))("%s comes out as in R", (step, pairs) => {
    for (const [stepInR, theirs, ours, near] of pairs) {
      const wanted = [inR[stepInR]?.[theirs] ?? Number.NaN].flat();
      const found = [fieldsOf(step)[ours] as number | readonly number[]].flat();
      expect(found.length, `${step}.${ours}`).toBe(wanted.length);
      for (const [at, value] of wanted.entries())
        closeTo(
          found[at] ?? Number.NaN,
          value,
          near,
          step === "polr" ? { scale: Math.max(...wanted.map(Math.abs)) } : {},
        );
    }
  });
  it("the bootstrap's limits stand within 5 % of their distance in R, whose draws are others", () => {
    const [low = 0, high = 0] = (inR.bootstrap?.bca ?? []) as readonly number[];
    const found = fieldsOf("bootstrap");
    const near = 0.05 * (high - low);
    expect(Math.abs(Number(found.bca_low) - low)).toBeLessThan(near);
    expect(Math.abs(Number(found.bca_high) - high)).toBeLessThan(near);
  });
  it("the permutation's p stands within the error of its draws", () => {
    const p = inR.permutation?.p as number;
    const near = 4 * Math.sqrt((p * (1 - p)) / 10_000) + 1e-4;
    expect(Math.abs(Number(fieldsOf("permutation").p_two_sided) - p)).toBeLessThanOrEqual(near);
  });
});
