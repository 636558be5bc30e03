// Numerator and denominator of Cody's rational approximation for 0.66 <= |z| <= 5.65, highest power last but one.
const C = [
  0.39894151208813466, 8.883149794388377, 93.50665613217785, 597.2702763948002, 2494.5375852903726, 6848.190450536283,
  11602.65143764735, 9842.714838383978, 1.0765576773720192e-8,
] as const;
const D = [
  22.266688044328117, 235.387901782625, 1519.3775994075547, 6485.558298266761, 18615.571640885097, 34900.95272114598,
  38912.00328609327, 19685.429676859992,
] as const;
const A = [2.2352520354606837, 161.02823106855587, 1067.6894854603709, 18154.98125334356, 0.06568233791820745] as const;
const B = [47.202581904688245, 976.0985517377767, 10260.932208618979, 45507.78933502673] as const;

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
 * @example normalUpperTail(4) // 0.000031671241833119924
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
  } else tail = size > 39 ? 0 : 0.3989422804014327 * exponential(size) * millsRatio(size);
  return z > 0 ? tail : 1 - tail;
}
