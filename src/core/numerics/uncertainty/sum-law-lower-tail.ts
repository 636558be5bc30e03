import { compensatedSum } from "../compensated-sum.ts";
import { normalLowerTail } from "../distributions/normal-lower-tail.ts";

/** Terms of the closed form: two a rectangle, so 2^12. */
const MOST_RECTANGLES = 12;
const MOST_STEPS = 200_000;

/** P(S <= x) of a sum of centred rectangles by the truncated powers: sum over signs of (x + sum +-a)_+^n / (n! prod 2a); null where digits cancel. */
function rectanglesLowerTail(x: number, halfWidths: readonly number[]): number | null {
  const n = halfWidths.length;
  if (n > MOST_RECTANGLES) return null;
  if (x > 0) {
    const above = rectanglesLowerTail(-x, halfWidths);
    return above === null ? null : 1 - above;
  }
  const terms: number[] = [];
  for (let signs = 0; signs < 2 ** n; signs++) {
    let place = x;
    let sign = 1;
    for (let i = 0; i < n; i++) {
      const isMinus = (signs >>> i) & 1;
      place += isMinus ? -(halfWidths[i] as number) : (halfWidths[i] as number);
      if (isMinus) sign = -sign;
    }
    if (place <= 0) continue;
    let term = sign;
    for (let i = 0; i < n; i++) term *= place / (2 * (halfWidths[i] as number) * (i + 1));
    terms.push(term);
  }
  const tail = compensatedSum(terms);
  const lost = 4 * n * Number.EPSILON * terms.reduce((sum, term) => sum + Math.abs(term), 0);
  return lost <= 1e-11 ? Math.min(1, Math.max(0, tail)) : null;
}

/** The same with a normal part, by inverting the characteristic function: 1/2 + (1/pi) integral sin(t x) phi(t) / t dt, midpoints. */
function smoothLowerTail(x: number, sd: number, halfWidths: readonly number[]): number | null {
  const reach = Math.abs(x) + 9 * sd + halfWidths.reduce((sum, a) => sum + a, 0);
  const step = Math.PI / reach;
  const steps = Math.ceil(9 / (sd * step));
  if (steps > MOST_STEPS) return null;
  const terms = new Float64Array(steps);
  for (let k = 0; k < steps; k++) {
    const t = (k + 0.5) * step;
    let phi = Math.exp(-0.5 * (sd * t) ** 2);
    for (const a of halfWidths) phi *= Math.sin(a * t) / (a * t);
    terms[k] = (Math.sin(t * x) * phi) / (k + 0.5);
  }
  return 0.5 + compensatedSum(terms) / Math.PI;
}

/**
 * P(S <= x) of a sum of independent centred inputs: one normal of standard deviation sd and rectangles of half widths a_i (a triangle is two
 * rectangles of half its half width). sd >= 0; halfWidths > 0, any number with a normal part, else up to twelve; not both lacking.
 * Absolute 1e-11. Null where that is not reached: half widths so unlike that digits cancel, or a normal part too small beside the rectangles.
 * Source: W. Feller, An Introduction to Probability Theory II, I.9 (truncated powers); J. Gil-Pelaez (1951), Biometrika 38, 481-482, with the
 * lattice sum of R. B. Davies (1973), Biometrika 60, 415-417.
 * @example sumLawLowerTail(3.879406741347812, 0, [1.7320508, 1.7320508, 1.7320508, 1.7320508]) // 0.975
 */
export function sumLawLowerTail(x: number, sd: number, halfWidths: readonly number[]): number | null {
  if (halfWidths.length === 0) return normalLowerTail(x / sd);
  return sd > 0 ? smoothLowerTail(x, sd, halfWidths) : rectanglesLowerTail(x, halfWidths);
}
