import { betaOddsQuantile } from "./beta-odds-quantile.ts";

/** x with 1 - I_x(a, b) = p of the beta law, p down to 1e-300. p in [0, 1]; a, b > 0. Relative 1e-12. Source: see betaOddsQuantile. */
export const betaUpperQuantile = (p: number, a: number, b: number): number =>
  p <= 0 ? 1 : p >= 1 ? 0 : 1 / (1 + Math.exp(-betaOddsQuantile(1 - p, p, a, b)));
