import { fTails } from "./f-tails.ts";

/** Lower tail of the F law, P(F < f). f >= 0; df1, df2 > 0. Relative 1e-12. Source: see fTails. */
export const fLowerTail = (f: number, df1: number, df2: number): number => fTails(f, df1, df2).lower;
