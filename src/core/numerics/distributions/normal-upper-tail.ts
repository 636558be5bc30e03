// Numerator and denominator of Cody's rational approximation for 0.66 <= |z| <= 5.65, highest power last but one.
const C = [0.39894151208813466764, 8.8831497943883759412, 93.506656132177855979, 597.27027639480026226, 2494.5375852903726711, 6848.1904505362823326, 11602.651437647350124, 9842.7148383839780218, 1.0765576773720192317e-8] as const;
const D = [22.266688044328115691, 235.38790178262499861, 1519.377599407554805, 6485.558298266760755, 18615.571640885098091, 34900.952721145977266, 38912.003286093271411, 19685.429676859990727] as const;
const A = [2.2352520354606839287, 161.02823106855587881, 1067.6894854603709582, 18154.981253343561249, 0.065682337918207449113] as const;
const B = [47.20258190468824187, 976.09855173777669322, 10260.932208618978205, 45507.789335026729956] as const;

/** Mills' ratio by its continued fraction, for z > 5.6: 1 / (z + 1 / (z + 2 / (z + 3 / …))). */
export function millsRatio(z: number): number {
  let tail = z;
  for (let k = 60; k >= 1; k--) tail = z + k / tail;
  return 1 / tail;
}

/** exp(-z^2/2) with z split at 1/16, so that the square is exact. */
const exponential = (z: number): number => {
  const head = Math.trunc(z * 16) / 16;
  return Math.exp(-0.5 * head * head) * Math.exp(-0.5 * (z - head) * (z + head));
};

/**
 * Upper tail of the standard normal law, P(Z > z). z: any real. Relative 1e-14 while the result is above 1e-300; 0 far out.
 * Source: W. J. Cody (1969), Math. Comp. 23, 631-637; DLMF 7.9.1 beyond 5.6.
 * @example normalUpperTail(4) // 3.1671241833119924e-05
 */
export function normalUpperTail(z: number): number {
  const size = Math.abs(z);
  if (size <= 0.67448975) {
    const square = z * z;
    let above = A[4] * square;
    let below = square;
    for (let i = 0; i < 3; i++) {
      above = (above + (A[i] as number)) * square;
      below = (below + (B[i] as number)) * square;
    }
    return 0.5 - (z * (above + A[3])) / (below + B[3]);
  }
  let tail: number;
  if (size <= 5.6) {
    let above = C[8] * size;
    let below = size;
    for (let i = 0; i < 7; i++) {
      above = (above + (C[i] as number)) * size;
      below = (below + (D[i] as number)) * size;
    }
    tail = (exponential(size) * (above + C[7])) / (below + D[7]);
  } else tail = size > 39 ? 0 : 0.398942280401432677939946 * exponential(size) * millsRatio(size);
  return z > 0 ? tail : 1 - tail;
}
