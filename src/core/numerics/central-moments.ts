import { compensatedSum } from "./compensated-sum.ts";

/**
 * Mean and the second to fourth central moments, each divided by n. x: at least one finite number. A record is subtracted before anything is
 * summed, and what rounding leaves of the mean of the differences is taken out again, so a common offset costs only the digits it had.
 * Result: relative 1e-14 of the numbers as given; NaN for none.
 * Source: T. F. Chan, G. H. Golub, R. J. LeVeque (1983), The American Statistician 37, 242-247.
 * @example centralMoments([1, 2, 3, 6]).m2 // 3.5
 */
export function centralMoments(x: ArrayLike<number>): {
  readonly mean: number;
  readonly m2: number;
  readonly m3: number;
  readonly m4: number;
} {
  const n = x.length;
  const first = x[0] ?? Number.NaN;
  const shifted = Float64Array.from({ length: n }, (_, i) => (x[i] as number) - first);
  const middle = compensatedSum(shifted) / n;
  const about = shifted.map((value) => value - middle);
  const left = compensatedSum(about) / n;
  const d = about.map((value) => value - left);
  const moment = (power: number): number => compensatedSum(d.map((value) => value ** power)) / n;
  return { mean: first + (middle + left), m2: moment(2), m3: moment(3), m4: moment(4) };
}
