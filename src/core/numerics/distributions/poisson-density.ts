import { poissonDeviance } from "./poisson-deviance.ts";
import { stirlingError } from "./stirling-error.ts";

/** m^x e^-m / Gamma(x + 1) for real x >= 0, m > 0, by saddle point: relative 1e-14. Source: C. Loader (2000). */
export const poissonDensity = (x: number, m: number): number =>
  x === 0 ? Math.exp(-m) : Math.exp(-stirlingError(x) - poissonDeviance(x, m)) / Math.sqrt(2 * Math.PI * x);
