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

const wholePower = (base: number, exponent: number): number => {
  let product = base;
  for (let k = 1; k < exponent; k++) product *= base;
  return product;
};

/** Change of one coefficient by record: its row of the inverse times the record, times e / (1 - h). Columns one after another, for speed. */
function changeOf(row: Float64Array, X: readonly Float64Array[], moved: Float64Array): Float64Array {
  const change = new Float64Array(moved.length);
  for (const [k, column] of X.entries()) {
    const weight = row[k] as number;
    for (let i = 0; i < change.length; i++) change[i] = (change[i] as number) + weight * (column[i] as number);
  }
  for (let i = 0; i < change.length; i++) change[i] = (change[i] as number) * (moved[i] as number);
  return change;
}

function inUnitsOf(change: Float64Array, without: Float64Array, scale: number): Float64Array {
  const shares = new Float64Array(change.length);
  for (let i = 0; i < shares.length; i++) shares[i] = (change[i] as number) / ((without[i] as number) * scale);
  return shares;
}

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
  const moved = array();
  const root = array();
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
    covarianceRatio[i] = wholePower((without / fit.sigma) ** 2, p) / free;
    moved[i] = e / free;
    root[i] = without;
  }
  const change = fit.inverse.map((row) => changeOf(row, fit.X, moved));
  const dfbetas = change.map((list, j) =>
    inUnitsOf(list, root, Math.sqrt((fit.inverse[j] as Float64Array)[j] as number)),
  );
  const largest = studentized.reduce(
    (most, value) => (Number.isFinite(value) ? Math.max(most, Math.abs(value)) : most),
    0,
  );
  const outlierP = df > 1 ? Math.min(1, n * tTwoSided(largest, df - 1)) : Number.NaN;
  return { standardized, studentized, cooks, dffits, covarianceRatio, change, dfbetas, outlierP };
}
