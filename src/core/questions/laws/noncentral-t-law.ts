import {
  chiSquareDensity,
  isNarrowOverChi,
  meanOverNormal,
  noncentralTLowerTail,
  noncentralTQuantile,
  noncentralTUpperTail,
  normalDensity,
  scaledChiNodes,
} from "../../numerics/index.ts";
import type { Law } from "./law.ts";

/** Density of the noncentral t: the mean of s phi(t s - ncp) over s = sqrt(chi-square / df), or that of s f(s) / |t| over Z = t s - ncp. */
function noncentralTDensity(t: number, df: number, ncp: number): number {
  if (isNarrowOverChi(t, df, ncp))
    return meanOverNormal((z) => {
      const s = (z + ncp) / t;
      return s > 0 ? (2 * df * s * s * chiSquareDensity(df * s * s, df)) / Math.abs(t) : 0;
    });
  const { s, w } = scaledChiNodes(df);
  let sum = 0;
  for (let i = 0; i < s.length; i++) {
    const at = s[i] as number;
    sum += (w[i] as number) * at * normalDensity(t * at - ncp);
  }
  return sum;
}

/** The noncentral t law as the table of laws takes it. df > 0, finite; ncp any real. Density relative 1e-9. */
export const noncentralTLaw = (df: number, ncp: number): Law => ({
  lower: (x) => noncentralTLowerTail(x, df, ncp),
  upper: (x) => noncentralTUpperTail(x, df, ncp),
  density: (x) => noncentralTDensity(x, df, ncp),
  quantile: (p) => noncentralTQuantile(p, 1 - p, df, ncp),
  upperQuantile: (p) => noncentralTQuantile(1 - p, p, df, ncp),
});
