import { betaOddsQuantile } from "./beta-odds-quantile.ts";

/** f with P(F > f) = p of the F law, p down to 1e-300. p in (0, 1); df1, df2 > 0. Relative 1e-11. Source: Abramowitz and Stegun 26.6.2. */
export const fUpperQuantile = (p: number, df1: number, df2: number): number =>
  p <= 0 ? Number.POSITIVE_INFINITY : p >= 1 ? 0 : (df2 / df1) * Math.exp(betaOddsQuantile(1 - p, p, df1 / 2, df2 / 2));
