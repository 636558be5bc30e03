import { betaFront } from "./beta-density.ts";

/** Density of the F law. f: any real, 0 below 0; df1, df2 > 0. Relative 1e-12. Source: Abramowitz and Stegun 26.6.1. */
export function fDensity(f: number, df1: number, df2: number): number {
  if (f < 0) return 0;
  if (f === 0) return df1 < 2 ? Number.POSITIVE_INFINITY : df1 > 2 ? 0 : 1;
  const odds = (df1 * f) / df2;
  return betaFront(1 / (1 + 1 / odds), 1 / (1 + odds), df1 / 2, df2 / 2) / f;
}
