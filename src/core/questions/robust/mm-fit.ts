import { mean, positiveDefinite } from "../../numerics/index.ts";
import { bisquare } from "./bisquare.ts";
import type { RobustFit } from "./huber-fit.ts";
import type { SFit, STuning } from "./s-fit.ts";
import { settledFit } from "./settled-fit.ts";

const MOST_STEPS = 2000;

/** X' v for each column of X. */
const against = (X: readonly Float64Array[], v: Float64Array): Float64Array =>
  Float64Array.from(X, (column) => column.reduce((sum, value, i) => sum + value * (v[i] as number), 0));

/** X' diag(v) X, row by row. */
const between = (X: readonly Float64Array[], v: Float64Array): Float64Array =>
  Float64Array.from(
    X.flatMap((column) => [
      ...against(
        X,
        column.map((value, i) => value * (v[i] as number)),
      ),
    ]),
  );

/**
 * Covariance that holds with an unequal scatter and a skew law, for the scale was found by the S-estimate; NaN where the curvature of the fit is not positive, and few
 * records may give a variance below zero. The mean of rho is the breakdown asked for (R's robustbase 0.95 takes a half whatever was asked). Source: C. Croux, G. Dhaene, D. Hoorelbeke (2003), Robust standard errors for robust estimators, section 2.
 */
function covarianceOf(
  X: readonly Float64Array[],
  residuals: Float64Array,
  s: SFit,
  c: number,
  tuning: STuning,
): Float64Array {
  const [n, p, { scale }] = [residuals.length, X.length, s];
  const [u, u0] = [residuals.map((r) => r / (scale * c)), s.residuals.map((r) => r / (scale * tuning.c))];
  const curvature = positiveDefinite(between(X, u.map(bisquare.slope)), p);
  if (!curvature) return new Float64Array(p * p).fill(Number.NaN);
  const A = curvature.inverse().map((value) => value * scale);
  const apply = (v: ArrayLike<number>) =>
    Float64Array.from({ length: p }, (_, j) => {
      let sum = 0;
      for (let k = 0; k < p; k++) sum += (A[j * p + k] as number) * (v[k] as number);
      return sum;
    });
  const psi = u.map((value) => c * value * bisquare.weight(value));
  const chi = u0.map(bisquare.rho);
  // d rho / dr r / scale of the start: 6 u^2 weight(u).
  const steepness = mean(u0.map((value) => 6 * value * value * bisquare.weight(value)));
  const tilt = apply(
    against(
      X,
      u.map((value) => c * value * bisquare.slope(value)),
    ),
  ).map((value) => value / steepness);
  const own = between(
    X,
    psi.map((value) => value * value),
  );
  const mixed = apply(
    against(
      X,
      psi.map((value, i) => value * (chi[i] as number)),
    ),
  );
  const spread = mean(chi.map((value) => value * value)) - tuning.breakdown ** 2;
  return Float64Array.from({ length: p * p }, (_, at) => {
    const [j, k] = [Math.floor(at / p), at % p];
    let meat = 0;
    for (let a = 0; a < p; a++)
      for (let b = 0; b < p; b++)
        meat += (A[j * p + a] as number) * (own[a * p + b] as number) * (A[k * p + b] as number);
    const [one, other] = [tilt[j] as number, tilt[k] as number];
    return meat + (spread * one * other - one * (mixed[k] as number) - other * (mixed[j] as number)) / n;
  });
}

/**
 * The MM-estimate: from an S-estimate on, with its scale, the bisquare of tuning c (4.685061 for 95 % of the efficiency of least squares on normal data).
 * X: p columns of length n, they and y of about the size 1; s: its scale is above zero. null where it does not settle or the weights leave too few records.
 * Source: V. J. Yohai (1987), Annals of Statistics 15, 642-656.
 */
export function mmFit(
  X: readonly Float64Array[],
  y: Float64Array,
  s: SFit,
  c: number,
  tuning: STuning,
): RobustFit | null {
  const weightsOf = (residuals: Float64Array) => residuals.map((r) => bisquare.weight(r / (c * s.scale)));
  const plane = settledFit(X, y, s, weightsOf, MOST_STEPS);
  if (!plane) return null;
  const { coefficients, residuals } = plane;
  const covariance = covarianceOf(X, residuals, s, c, tuning);
  return { coefficients, residuals, scale: s.scale, weights: weightsOf(residuals), covariance };
}
