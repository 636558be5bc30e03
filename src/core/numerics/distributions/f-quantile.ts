import { betaOddsQuantile } from "./beta-odds-quantile.ts";

/** Quantile of the F law: f with P(F < f) = p. p in (0, 1); df1, df2 > 0. Relative 1e-11. Source: Abramowitz and Stegun 26.6.2. */
export const fQuantile = (p: number, df1: number, df2: number): number =>
  p <= 0 ? 0 : p >= 1 ? Number.POSITIVE_INFINITY : (df2 / df1) * Math.exp(betaOddsQuantile(p, 1 - p, df1 / 2, df2 / 2));
