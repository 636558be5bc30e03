/**
 * c4: mean of the standard deviation of n normal values over the true one, sqrt(2 / (n - 1)) Gamma(n / 2) / Gamma((n - 1) / 2).
 * n: whole, at least 2. Relative 1e-14 up to n = 1000, by the recurrence of the ratio of two gamma functions half a step apart.
 * Source: W. A. Shewhart (1931), Economic Control of Quality; DLMF 5.5.1.
 * @example chiMean(3) // 0.886226925452758
 */
export function chiMean(n: number): number {
  let ratio = 1 / Math.sqrt(Math.PI);
  for (let size = 2; size < n; size++) ratio = (size - 1) / 2 / ratio;
  return Math.sqrt(2 / (n - 1)) * ratio;
}
