import { compensatedSum } from "./compensated-sum.ts";

/**
 * Arithmetic mean: first + sum(x - first) / n, so that a large common offset costs no digits.
 * x: at least one finite number. NaN for none (callers check their needs first).
 * Source: T. F. Chan, G. H. Golub, R. J. LeVeque (1983), The American Statistician 37, 242-247.
 */
export function mean(x: ArrayLike<number>): number {
  const first = x[0] ?? Number.NaN;
  const shifted = new Float64Array(x.length);
  for (let i = 0; i < x.length; i++) shifted[i] = (x[i] as number) - first;
  return first + compensatedSum(shifted) / x.length;
}
