import { normalUpperTail } from "./normal-upper-tail.ts";

/** Lower tail of the standard normal law, P(Z < z) = P(Z > -z). z: any real. Relative 1e-14. Source: see normalUpperTail. */
export const normalLowerTail = (z: number): number => normalUpperTail(-z);
