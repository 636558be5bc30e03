/**
 * How many choices of `size` out of the scores have each sum, as shares: share[k] belongs to the sum least + k, where least is the sum of the `size`
 * smallest. One score at a time is let in (the shift algorithm), additions of what is positive alone, so shares are right to relative n ulp.
 * scores: whole, >= 0; size: whole, from 0 to their number, which is below 1000. At most size times number times the longest sum steps.
 * Source: B. Streitberg, J. Roehmel (1986), Statistical Software Newsletter 12, 10-17.
 * @example rankSumDistribution([1, 2, 3], 2) // { least: 3, shares: 1/3, 1/3, 1/3 }
 */
export function rankSumDistribution(
  scores: ArrayLike<number>,
  size: number,
): { readonly least: number; readonly shares: Float64Array } {
  const sorted = Float64Array.from(scores).sort();
  const n = sorted.length;
  const lowest = sorted[0] ?? 0;
  // upTo[i]: sum of the i smallest scores, each less the least of all.
  const upTo = new Float64Array(n + 1);
  for (let i = 0; i < n; i++) upTo[i + 1] = (upTo[i] as number) + (sorted[i] as number) - lowest;
  const most = (i: number, chosen: number) => (upTo[i] as number) - (upTo[i - chosen] as number);
  const rows = Array.from({ length: size + 1 }, (_, chosen) => new Float64Array(most(n, chosen) + 1));
  (rows[0] as Float64Array)[0] = 1;
  for (let i = 0; i < n; i++) {
    const shift = (sorted[i] as number) - lowest;
    // Fewer chosen than this cannot become `size` with the scores that are left.
    const fewest = Math.max(1, size - (n - 1 - i));
    for (let chosen = Math.min(size, i + 1); chosen >= fewest; chosen--) {
      const [into, from] = [rows[chosen] as Float64Array, rows[chosen - 1] as Float64Array];
      const least = upTo[chosen - 1] as number;
      for (let sum = most(i, chosen - 1); sum >= least; sum--)
        into[sum + shift] = (into[sum + shift] as number) + (from[sum] as number);
    }
  }
  const base = upTo[size] as number;
  const counts = (rows[size] as Float64Array).subarray(base);
  const all = counts.reduce((total, count) => total + count, 0);
  return { least: base + size * lowest, shares: counts.map((count) => count / all) };
}
