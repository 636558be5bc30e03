import { poissonDensity } from "./poisson-density.ts";

const STEPS = 200_000;

/**
 * Both incomplete gamma ratios P(a, x) and Q(a, x), the small one never by subtraction. a > 0, x >= 0. Relative 1e-13.
 * Series below x = a + 1, continued fraction (Lentz) above; both stop at a relative change under 1e-16.
 * Source: DLMF 8.7.1 and 8.9.2; prefactor by saddle point (Loader 2000).
 */
export function gammaTails(a: number, x: number): { readonly lower: number; readonly upper: number } {
  if (x <= 0) return { lower: 0, upper: 1 };
  const front = poissonDensity(a, x);
  if (x < a + 1) {
    let term = 1;
    let sum = 1;
    for (let n = 1; n <= STEPS && term > sum * 1e-17; n++) {
      term *= x / (a + n);
      sum += term;
    }
    const lower = Math.min(1, front * sum);
    return { lower, upper: 1 - lower };
  }
  let b = x + 1 - a;
  let c = 1e300;
  let d = 1 / b;
  let h = d;
  for (let i = 1; i <= STEPS; i++) {
    const an = -i * (i - a);
    b += 2;
    d = 1 / (an * d + b || 1e-300);
    c = b + an / c || 1e-300;
    h *= d * c;
    if (Math.abs(d * c - 1) < 2e-16) break;
  }
  const upper = Math.min(1, front * a * h);
  return { lower: 1 - upper, upper };
}
