/**
 * How many choices of `size` records give each sum of doubled midranks: counts[s] for sums s from 0. ranks: doubled midranks, whole numbers.
 * The counts of all n choose size choices, by adding one record at a time. n size sum steps; exact up to 2^53, relative 1e-13 beyond.
 * Source: Streitberg and Röhmel (1986), Statistical Software Newsletter 12, 10-17 (the shift algorithm).
 */
export function rankSumLaw(ranks: Int32Array, size: number): Float64Array {
  const sorted = ranks.slice().sort();
  const most = sorted.subarray(sorted.length - size).reduce((sum, rank) => sum + rank, 0);
  const counts = Array.from({ length: size + 1 }, () => new Float64Array(most + 1));
  (counts[0] as Float64Array)[0] = 1;
  for (const [at, rank] of sorted.entries())
    for (let k = Math.min(size, at + 1); k >= 1; k--) {
      const [from, to] = [counts[k - 1] as Float64Array, counts[k] as Float64Array];
      for (let sum = most; sum >= rank; sum--) to[sum] = (to[sum] as number) + (from[sum - rank] as number);
    }
  return counts[size] as Float64Array;
}
