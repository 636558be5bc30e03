import { binomialDensity } from "./binomial-density.ts";

const STEPS = 200_000;
const TINY = 1e-300;

/** Continued fraction of DLMF 8.17.22, by Lentz; good for x below (a + 1) / (a + b + 2). Stops at a relative change under 1e-16. */
function fraction(x: number, a: number, b: number): number {
  let c = 1;
  let d = 1 / Math.max(TINY, 1 - ((a + b) * x) / (a + 1));
  let h = d;
  for (let m = 1; m <= STEPS; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / (1 + even * d || TINY);
    c = 1 + even / c || TINY;
    h *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / (1 + odd * d || TINY);
    c = 1 + odd / c || TINY;
    const change = d * c;
    h *= change;
    if (Math.abs(change - 1) < 2e-16) break;
  }
  return h;
}

/**
 * Both tails of the beta distribution, the incomplete beta ratio I_x(a, b) and its complement, neither by subtraction where it is small.
 * x in [0, 1] and y = 1 - x given beside it; a, b > 0. Relative 1e-12 for a, b up to 1e6.
 * Source: DLMF 8.17.22 (continued fraction), prefactor by saddle point (Loader 2000).
 */
export function betaTails(
  x: number,
  y: number,
  a: number,
  b: number,
): { readonly lower: number; readonly upper: number } {
  if (x <= 0) return { lower: 0, upper: 1 };
  if (y <= 0) return { lower: 1, upper: 0 };
  const front = ((a * b) / (a + b)) * binomialDensity(a, a + b, x, y);
  if (x <= (a + 1) / (a + b + 2)) {
    const lower = Math.min(1, (front * fraction(x, a, b)) / a);
    return { lower, upper: 1 - lower };
  }
  const upper = Math.min(1, (front * fraction(y, b, a)) / b);
  return { lower: 1 - upper, upper };
}
