import { betaTails } from "./beta-tails.ts";

/** Upper tail of the beta law, 1 - I_x(a, b), not by subtraction where it is small. x in [0, 1]; a, b > 0. Relative 1e-12. Source: see betaTails. */
export const betaUpperTail = (x: number, a: number, b: number): number => betaTails(x, 1 - x, a, b).upper;
