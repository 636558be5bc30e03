import { tTails } from "./t-tails.ts";

/** P(|T| > |t|) of Student's t. t: any real; degreesOfFreedom > 0. Relative 1e-12. Source: see tTails. */
export const tTwoSided = (t: number, degreesOfFreedom: number): number => tTails(Math.abs(t), degreesOfFreedom).outside;
