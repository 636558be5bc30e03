import { binomialDensity } from "./binomial-density.ts";

/** x^a y^b / B(a, b), which the densities of beta, F and t share. x, y in [0, 1] with x + y = 1; a, b > 0. Relative 1e-13. Source: Loader (2000). */
export const betaFront = (x: number, y: number, a: number, b: number): number =>
  ((a * b) / (a + b)) * binomialDensity(a, a + b, x, y);

/** Value of a density x^(shape - 1) at its end: none, finite or infinite. */
const atEnd = (shape: number, other: number): number => (shape < 1 ? Number.POSITIVE_INFINITY : shape > 1 ? 0 : other);

/** Density of the beta law, x^(a-1) (1-x)^(b-1) / B(a, b). x: any real, 0 outside [0, 1]; a, b > 0. Relative 1e-12. Source: DLMF 8.17. */
export function betaDensity(x: number, a: number, b: number): number {
  if (x < 0 || x > 1) return 0;
  if (x === 0) return atEnd(a, b);
  if (x === 1) return atEnd(b, a);
  return betaFront(x, 1 - x, a, b) / (x * (1 - x));
}
