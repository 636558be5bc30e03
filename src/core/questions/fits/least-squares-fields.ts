import type { FieldSpec, MethodFields } from "../../base/index.ts";
import { plain } from "../inputs/complete-inputs.ts";
import type { LinearFit } from "./linear-fit.ts";
import { explainedShare, fitAt } from "./linear-fit.ts";

/** What the least-squares methods return; the constant stands first. */
export const leastSquaresSpecs: Readonly<Record<string, FieldSpec>> = {
  n: { meaning: "records used" },
  set_aside: { meaning: "records with a missing value" },
  df_residual: { meaning: "degrees of freedom" },
  coef: { meaning: "coefficients" },
  se: { meaning: "their standard errors" },
  t: { meaning: "coefficient over standard error; withheld where the fit is exact" },
  p: { meaning: "two-sided p; withheld with t" },
  ci95_low: { meaning: "lower ends of the t intervals" },
  ci95_high: { meaning: "upper ends" },
  r2: { meaning: "share of the scatter explained" },
  adj_r2: { meaning: "the same, adjusted" },
  sigma: { meaning: "residual standard deviation" },
  F: { meaning: "F of the whole fit" },
  F_df1: { meaning: "its first degrees of freedom" },
  F_df2: { meaning: "its second" },
  F_p: { meaning: "its p" },
  fit: { meaning: "fitted values at predict_at" },
  mean_low: { meaning: "interval of the mean there, lower" },
  mean_high: { meaning: "upper" },
  pred_low: { meaning: "interval of a next record there, lower" },
  pred_high: { meaning: "upper" },
};

/** Fields of a fit; those that do not exist (no degrees of freedom, no scatter) are null. places: rows of the design at which to predict. */
export function leastSquaresFields(
  fit: LinearFit,
  y: Float64Array,
  constant: boolean,
  setAside: number,
  places: readonly (readonly number[])[],
  weights?: Float64Array,
): MethodFields {
  const share = explainedShare(fit, y, constant, weights);
  const exact = fit.residualSumOfSquares <= 1e-28 * y.reduce((sum, value) => sum + value * value, 0);
  const known = (value: number) => (Number.isFinite(value) && !(exact && fit.degreesOfFreedom === 0) ? value : null);
  const flat = fit.coefficients
    .slice(constant ? 1 : 0)
    .every((b) => Math.abs(b) <= 1e-14 * Math.abs(fit.coefficients[0] ?? 0));
  const at = places.map((place) => fitAt(fit, place));
  const withheld = Array.from(fit.coefficients, () => null);
  return {
    n: y.length,
    set_aside: setAside,
    df_residual: fit.degreesOfFreedom,
    coef: plain(fit.coefficients),
    se: plain(fit.standardErrors),
    t: exact ? withheld : plain(fit.t),
    p: exact ? withheld : plain(fit.p),
    ci95_low: plain(fit.low),
    ci95_high: plain(fit.high),
    r2: flat && exact ? null : known(share.r2),
    adj_r2: flat && exact ? null : known(share.adjusted),
    sigma: known(fit.sigma),
    F: exact ? null : known(share.F),
    F_df1: share.df1,
    F_df2: fit.degreesOfFreedom,
    F_p: exact ? null : known(share.p),
    fit: plain(at.map((place) => place.fit)),
    mean_low: plain(at.map((place) => place.meanLow)),
    mean_high: plain(at.map((place) => place.meanHigh)),
    pred_low: plain(at.map((place) => place.nextLow)),
    pred_high: plain(at.map((place) => place.nextHigh)),
  };
}
