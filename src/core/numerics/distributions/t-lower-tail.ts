import { tUpperTail } from "./t-upper-tail.ts";

/** Lower tail of Student's t: P(T < t) = P(T > -t). t: any real; degreesOfFreedom > 0. Relative 1e-12. Source: see tUpperTail. */
export const tLowerTail = (t: number, degreesOfFreedom: number): number => tUpperTail(-t, degreesOfFreedom);
