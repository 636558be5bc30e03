// Noncentral t and the studentized range, whose tails are sums over the law of the standard deviation.
import {
  noncentralTLowerTail,
  noncentralTQuantileOf,
  noncentralTUpperTail,
  normalDensity,
  scaledChiNodes,
  studentizedRangeLowerTail,
  studentizedRangeUpperQuantile,
  studentizedRangeUpperTail,
} from "../../numerics/index.ts";
import type { Law } from "./law.ts";

/** Density of the noncentral t: the mean of s phi(t s - ncp) over s = sqrt(chi-square / df). */
function noncentralTDensity(t: number, df: number, ncp: number): number {
  const { s, w } = scaledChiNodes(df);
  let sum = 0;
  for (let i = 0; i < s.length; i++) {
    const at = s[i] as number;
    sum += (w[i] as number) * at * normalDensity(t * at - ncp);
  }
  return sum;
}

export const noncentralTLaw = (df: number, ncp: number): Law => ({
  lower: (x) => noncentralTLowerTail(x, df, ncp),
  upper: (x) => noncentralTUpperTail(x, df, ncp),
  density: (x) => noncentralTDensity(x, df, ncp),
  quantile: (p) => noncentralTQuantileOf(p, 1 - p, df, ncp),
  upperQuantile: (p) => noncentralTQuantileOf(1 - p, p, df, ncp),
});

const rangeUpperQuantile = (p: number, means: number, df: number): number =>
  p <= 0 ? Number.POSITIVE_INFINITY : p >= 1 ? 0 : studentizedRangeUpperQuantile(p, means, df);

export const studentizedRangeLaw = (means: number, df: number): Law => ({
  lower: (x) => studentizedRangeLowerTail(x, means, df),
  upper: (x) => studentizedRangeUpperTail(x, means, df),
  quantile: (p) => rangeUpperQuantile(1 - p, means, df),
  upperQuantile: (p) => rangeUpperQuantile(p, means, df),
});
