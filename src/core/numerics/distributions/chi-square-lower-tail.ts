import { gammaTails } from "./gamma-tails.ts";

/** Lower tail of chi-square, P(X < x) = P(df/2, x/2). x >= 0; degreesOfFreedom > 0. Relative 1e-12. Source: Abramowitz and Stegun 26.4.19. */
export const chiSquareLowerTail = (x: number, degreesOfFreedom: number): number =>
  gammaTails(degreesOfFreedom / 2, x / 2).lower;
