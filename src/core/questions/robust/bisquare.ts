import { bracketedRoot, normalDensity, normalUpperTail } from "../../numerics/index.ts";

/**
 * Tukey's bisquare, u a residual over c times the scale: rho = 1 - (1 - u^2)^3 inside |u| < 1 and 1 outside, its weight (1 - u^2)^2 and nothing outside.
 * Source: A. E. Beaton, J. W. Tukey (1974), Technometrics 16, 147-185; R. A. Maronna et al. (2019), Robust Statistics, 2nd ed., section 2.3.
 */
export const bisquare = {
  rho: (u: number): number => (Math.abs(u) < 1 ? 1 - (1 - u * u) ** 3 : 1),
  weight: (u: number): number => (Math.abs(u) < 1 ? (1 - u * u) ** 2 : 0),
  /** d (u weight(u)) / du. */
  slope: (u: number): number => (Math.abs(u) < 1 ? (1 - u * u) * (1 - 5 * u * u) : 0),
} as const;

/** Mean of rho(z / c) for normal z, by its moments inside (-c, c). */
function meanOfRho(c: number): number {
  const [outside, edge] = [2 * normalUpperTail(c), 2 * normalDensity(c)];
  const second = 1 - outside - c * edge;
  const fourth = 3 * second - c ** 3 * edge;
  const sixth = 5 * fourth - c ** 5 * edge;
  return (3 * second) / c ** 2 - (3 * fourth) / c ** 4 + sixth / c ** 6 + outside;
}

/** The c at which the scale of an S-estimate is the standard deviation of normal data: the mean of rho is `breakdown`, in (0, 0.5]. About 1.5476 for a half. */
export const consistentTuning = (breakdown: number): number =>
  bracketedRoot((c) => meanOfRho(c) - breakdown, 0.5, 10 / Math.sqrt(breakdown));
