/** Integrals over [-1, 1] of normalized Legendre polynomials p_0 .. p_(count-1), count x count, row by row; the integral of p_i p_j is 1 or 0. */
export type LegendreIntegrals = {
  /** p_i'' p_j'' */
  readonly bending: Float64Array;
  /** p_i'' p_j */
  readonly mixed: Float64Array;
  /** p_i' p_j' */
  readonly slope: Float64Array;
  /** p_i' p_j */
  readonly first: Float64Array;
};

const product = (a: Float64Array, b: Float64Array, n: number) =>
  Float64Array.from({ length: n * n }, (_, at) => {
    const [row, column] = [Math.floor(at / n), at % n];
    let sum = 0;
    for (let k = 0; k < n; k++) sum += (a[row * n + k] as number) * (b[k * n + column] as number);
    return sum;
  });

const turned = (a: Float64Array, n: number) =>
  Float64Array.from(a, (_, at) => a[(at % n) * n + Math.floor(at / n)] as number);

/**
 * The integrals that bending of a rectangle needs, exact up to rounding: no quadrature.
 * The derivative of p_i is the sum of sqrt((2i+1)(2k+1)) p_k over k = i-1, i-3, …; the rest are products of that matrix with itself.
 * count: number of polynomials, 1 or more. Source: Abramowitz and Stegun (1964), 8.5.4 and 8.14.11, summed.
 */
export function legendreIntegrals(count: number): LegendreIntegrals {
  const first = Float64Array.from({ length: count * count }, (_, at) => {
    const [i, k] = [Math.floor(at / count), at % count];
    return k < i && (i - k) % 2 === 1 ? Math.sqrt((2 * i + 1) * (2 * k + 1)) : 0;
  });
  const mixed = product(first, first, count);
  return {
    first,
    mixed,
    slope: product(first, turned(first, count), count),
    bending: product(mixed, turned(mixed, count), count),
  };
}
