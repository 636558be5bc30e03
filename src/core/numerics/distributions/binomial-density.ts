import { poissonDeviance } from "./poisson-deviance.ts";
import { stirlingError } from "./stirling-error.ts";

/**
 * Probability of exactly x successes in n trials, Gamma(n+1) / (Gamma(x+1) Gamma(n-x+1)) p^x q^(n-x), for real 0 <= x <= n.
 * p in [0, 1]; q = 1 - p given beside it so that neither loses digits. Relative 1e-13.
 * Source: C. Loader (2000), Fast and Accurate Computation of Binomial Probabilities.
 */
export function binomialDensity(x: number, n: number, p: number, q = 1 - p): number {
  if (p === 0) return x === 0 ? 1 : 0;
  if (q === 0) return x === n ? 1 : 0;
  if (x === 0) return Math.exp(n * (p < 0.1 ? Math.log1p(-p) : Math.log(q)));
  if (x === n) return Math.exp(n * (q < 0.1 ? Math.log1p(-q) : Math.log(p)));
  if (x < 0 || x > n) return 0;
  const exponent =
    stirlingError(n) -
    stirlingError(x) -
    stirlingError(n - x) -
    poissonDeviance(x, n * p) -
    poissonDeviance(n - x, n * q);
  return Math.exp(exponent) * Math.sqrt(n / (2 * Math.PI * x * (n - x)));
}
