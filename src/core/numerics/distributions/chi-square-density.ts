import { poissonDensity } from "./poisson-density.ts";

/** Density of chi-square. x: any real, 0 below 0; degreesOfFreedom > 0. Relative 1e-12. Source: Abramowitz and Stegun 26.4.1. */
export const chiSquareDensity = (x: number, degreesOfFreedom: number): number =>
  x < 0
    ? 0
    : x === 0
      ? degreesOfFreedom < 2
        ? Number.POSITIVE_INFINITY
        : degreesOfFreedom > 2
          ? 0
          : 0.5
      : ((degreesOfFreedom / 2) * poissonDensity(degreesOfFreedom / 2, x / 2)) / x;
