import { variance } from "./variance.ts";

/** Sample standard deviation with n - 1. x: at least two finite numbers; unit of x; NaN for fewer. Source: see variance. */
export const standardDeviation = (x: ArrayLike<number>): number => Math.sqrt(variance(x));
