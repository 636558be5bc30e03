import type { LinearFit } from "./linear-fit.ts";
import { linearFit } from "./linear-fit.ts";

/** Chebyshev polynomials of t in [-1, 1] up to this degree: a basis that stays apart where powers of x look alike. */
function chebyshevColumns(t: Float64Array, degree: number): Float64Array[] {
  const columns = [new Float64Array(t.length).fill(1), t];
  for (let k = 2; k <= degree; k++) {
    const [one, two] = [columns[k - 1] as Float64Array, columns[k - 2] as Float64Array];
    columns.push(t.map((value, i) => 2 * value * (one[i] as number) - (two[i] as number)));
  }
  return columns.slice(0, degree + 1);
}

/** Row i, column k: what the k-th Chebyshev polynomial of (x - centre) / half adds to the power x^i. */
function powersOfChebyshev(degree: number, centre: number, half: number): Float64Array[] {
  const polynomials: Float64Array[] = [];
  const shifted = (row: Float64Array) =>
    // times (x - centre) / half
    row.map((value, i) => ((row[i - 1] ?? 0) - centre * value) / half);
  for (let k = 0; k <= degree; k++) {
    const [one, two] = [polynomials[k - 1], polynomials[k - 2]];
    const next = new Float64Array(degree + 1);
    if (!one) next[0] = 1;
    else if (!two) next.set(shifted(one));
    else next.set(shifted(one).map((value, i) => 2 * value - (two[i] as number)));
    polynomials.push(next);
  }
  return Array.from({ length: degree + 1 }, (_, i) => Float64Array.from(polynomials, (row) => row[i] as number));
}

export type PolynomialFit = {
  /** The fit on the Chebyshev basis: residuals, sums of squares, rank. */
  readonly fit: LinearFit;
  /** Coefficients of 1, x, x^2 ... and their standard errors; NaN where the rank is short. */
  readonly coefficients: Float64Array;
  readonly standardErrors: Float64Array;
};

/**
 * Least squares of y on powers of x up to `degree`, found on Chebyshev polynomials of x brought to [-1, 1] and mapped back, so that the powers' likeness
 * (condition 1e15 for the hardest certified set) costs six digits and not all. x: at least two different values; degree: whole, 1 to 20.
 * Relative 1e-7 on the NIST set Filip (degree 10). Source: Forsythe (1957), J. SIAM 5, 74-88; A. Bjorck (1996), section 2.4.
 */
export function polynomialFit(x: Float64Array, y: Float64Array, degree: number): PolynomialFit {
  const [low, high] = [x.reduce((a, b) => Math.min(a, b)), x.reduce((a, b) => Math.max(a, b))];
  const [centre, half] = [low / 2 + high / 2, high / 2 - low / 2];
  const fit = linearFit(
    chebyshevColumns(
      x.map((value) => (value - centre) / half),
      degree,
    ),
    y,
  );
  const rows = powersOfChebyshev(degree, centre, half);
  const coefficients = Float64Array.from(rows, (row) =>
    row.reduce((sum, value, k) => sum + value * (fit.coefficients[k] as number), 0),
  );
  const standardErrors = Float64Array.from(rows, (row) => {
    let variance = 0;
    for (let a = 0; a <= degree; a++)
      for (let b = 0; b <= degree; b++)
        variance += (row[a] as number) * (row[b] as number) * ((fit.inverse[a] as Float64Array)[b] as number);
    return fit.sigma * Math.sqrt(Math.max(0, variance));
  });
  return { fit, coefficients, standardErrors };
}
