import { betaTails } from "./beta-tails.ts";

/**
 * Both tails of the F law: I_x(df1/2, df2/2) with x = df1 f / (df1 f + df2). f >= 0; degrees of freedom > 0. Relative 1e-12.
 * Source: Abramowitz and Stegun 26.6.2.
 */
export function fTails(f: number, df1: number, df2: number): { readonly lower: number; readonly upper: number } {
  if (!(f > 0)) return { lower: 0, upper: 1 };
  const odds = (df1 * f) / df2;
  return betaTails(1 / (1 + 1 / odds), 1 / (1 + odds), df1 / 2, df2 / 2);
}
