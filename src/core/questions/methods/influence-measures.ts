import { power } from "../../base/index.ts";
import { tTwoSided } from "../../numerics/index.ts";
import type { LinearFit } from "./linear-fit.ts";

/** One entry a record; NaN for a record that the fit passes through whatever it is (leverage 1). */
export type InfluenceMeasures = {
  readonly standardized: Float64Array;
  readonly studentized: Float64Array;
  readonly cooks: Float64Array;
  readonly dffits: Float64Array;
  readonly covarianceRatio: Float64Array;
  /** By coefficient, then by record: change of the coefficient when the record is left out, in its own unit. */
  readonly change: readonly Float64Array[];
  /** The same in standard errors of the fit without the record. */
  readonly dfbetas: readonly Float64Array[];
  /** Two-sided p of the largest deleted residual, times n, at most 1. */
  readonly outlierP: number;
};

/** Leave-one-out measures of a fit from its leverages, with no refit. Source: Belsley, Kuh and Welsch (1980), chapter 2. */
export function influenceMeasures(fit: LinearFit): InfluenceMeasures {
  const n = fit.residuals.length;
  const p = fit.X.length;
  const df = fit.degreesOfFreedom;
  const array = () => new Float64Array(n);
  const [standardized, studentized, cooks, dffits, covarianceRatio] = [
    array(),
    array(),
    array(),
    array(),
    array(),
  ] as const;
  const change = fit.X.map(array);
  const dfbetas = fit.X.map(array);
  for (let i = 0; i < n; i++) {
    const e = fit.residuals[i] as number;
    const h = fit.leverage[i] as number;
    const free = 1 - h < 1e-10 ? Number.NaN : 1 - h;
    const without = Math.sqrt(Math.max(0, fit.residualSumOfSquares - (e * e) / free) / (df - 1));
    const standard = e / (fit.sigma * Math.sqrt(free));
    const deleted = e / (without * Math.sqrt(free));
    standardized[i] = standard;
    studentized[i] = deleted;
    cooks[i] = (standard * standard * h) / (free * p);
    dffits[i] = deleted * Math.sqrt(h / free);
    covarianceRatio[i] = power(without / fit.sigma, 2 * p) / free;
    for (let j = 0; j < p; j++) {
      const row = fit.inverse[j] as Float64Array;
      let pull = 0;
      for (let k = 0; k < p; k++) pull += (row[k] as number) * ((fit.X[k] as Float64Array)[i] as number);
      const moved = (pull * e) / free;
      (change[j] as Float64Array)[i] = moved;
      (dfbetas[j] as Float64Array)[i] = moved / (without * Math.sqrt(row[j] as number));
    }
  }
  const largest = studentized.reduce(
    (most, value) => (Number.isFinite(value) ? Math.max(most, Math.abs(value)) : most),
    0,
  );
  const outlierP = df > 1 ? Math.min(1, n * tTwoSided(largest, df - 1)) : Number.NaN;
  return { standardized, studentized, cooks, dffits, covarianceRatio, change, dfbetas, outlierP };
}
