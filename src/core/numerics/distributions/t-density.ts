import { betaFront } from "./beta-density.ts";

/** Density of Student's t. t: any real; degreesOfFreedom > 0. Relative 1e-12. Source: Abramowitz and Stegun 26.7.1; near 0 by its value at 1e-9. */
export function tDensity(t: number, degreesOfFreedom: number): number {
  const size = Math.max(1e-9, Math.abs(t));
  const odds = (size / degreesOfFreedom) * size;
  return betaFront(1 / (1 + 1 / odds), 1 / (1 + odds), 0.5, degreesOfFreedom / 2) / size;
}
