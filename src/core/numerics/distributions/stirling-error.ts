const HALF_LOG_TWO_PI = 0.9189385332046728;
const SHIFT = 15;

const series = (x: number): number => {
  const r = 1 / (x * x);
  return (1 / 12 - r * (1 / 360 - r * (1 / 1260 - r * (1 / 1680 - r * (1 / 1188 - r * (691 / 360360 - r / 156)))))) / x;
};

/**
 * Error of Stirling's formula: log Gamma(x + 1) - (x + 1/2) log x + x - log(2 pi) / 2. x > 0. Absolute error below 1e-14.
 * Source: C. Loader (2000), Fast and Accurate Computation of Binomial Probabilities; series of DLMF 5.11.1.
 */
export function stirlingError(x: number): number {
  if (x >= SHIFT) return series(x);
  let product = 1;
  let z = x;
  while (z < SHIFT) {
    z += 1;
    product *= z;
  }
  const logGammaOfNext = (z + 0.5) * Math.log(z) - z + HALF_LOG_TWO_PI + series(z) - Math.log(product);
  return logGammaOfNext - (x + 0.5) * Math.log(x) + x - HALF_LOG_TWO_PI;
}
