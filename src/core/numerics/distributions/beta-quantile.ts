import { betaOddsQuantile } from "./beta-odds-quantile.ts";

/** Quantile of the beta law: x with I_x(a, b) = p. p in [0, 1]; a, b > 0. Relative 1e-12, also for x near 1e-300. Source: see betaOddsQuantile. */
export const betaQuantile = (p: number, a: number, b: number): number =>
  p <= 0 ? 0 : p >= 1 ? 1 : 1 / (1 + Math.exp(-betaOddsQuantile(p, 1 - p, a, b)));
