import { binomialDensity } from "./binomial-density.ts";

/**
 * Probability of x marked among `drawn`, out of `marked` and `others` without replacement: C(marked, x) C(others, drawn - x) / C(marked + others, drawn).
 * All whole; 0 <= x <= marked, 0 <= drawn - x <= others. Relative 1e-12: three binomial probabilities of one share, of which the share falls out.
 * Source: C. Loader (2000), Fast and Accurate Computation of Binomial Probabilities, section 5.
 * @example hypergeometricDensity(3, 4, 4, 4) -> 16 / 70
 */
export function hypergeometricDensity(x: number, marked: number, others: number, drawn: number): number {
  const all = marked + others;
  if (drawn === 0 || drawn === all) return 1;
  const [share, rest] = [drawn / all, (all - drawn) / all];
  return (
    (binomialDensity(x, marked, share, rest) * binomialDensity(drawn - x, others, share, rest)) /
    binomialDensity(drawn, all, share, rest)
  );
}
