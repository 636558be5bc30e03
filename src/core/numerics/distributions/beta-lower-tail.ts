import { betaTails } from "./beta-tails.ts";

/** Lower tail of the beta law, I_x(a, b). x in [0, 1]; a, b > 0. Relative 1e-12. Source: see betaTails. */
export const betaLowerTail = (x: number, a: number, b: number): number => betaTails(x, 1 - x, a, b).lower;
