import { normalQuantile } from "../distributions/normal-quantile.ts";
import { tQuantile } from "../distributions/t-quantile.ts";

/**
 * Factor k by which a standard uncertainty is multiplied for an interval of this level: Student's t, the normal law for infinite degrees of freedom.
 * level in (0, 1); degreesOfFreedom > 0. Source: JCGM 100:2008, G.3 and G.6.4.
 * @example coverageFactor(0.95, 16) // 2.1199
 */
export const coverageFactor = (level: number, degreesOfFreedom: number): number =>
  Number.isFinite(degreesOfFreedom) ? tQuantile((1 + level) / 2, degreesOfFreedom) : normalQuantile((1 + level) / 2);
