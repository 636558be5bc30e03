import { fTails } from "./f-tails.ts";

/** Upper tail of the F law, P(F > f). f >= 0; df1, df2 > 0. Relative 1e-12. Source: see fTails. @example fUpperTail(60, 1, 5) // 0.000573245142039428 */
export const fUpperTail = (f: number, df1: number, df2: number): number => fTails(f, df1, df2).upper;
