/**
 * How many choices of `size` out of the scores have each sum, as shares: share[k] belongs to the sum least + k, where least is the sum of the `size`
 * smallest. One score at a time is let in (the shift algorithm), additions of what is positive alone, so shares are right to relative n ulp.
 * scores: whole, >= 0; size: whole, from 0 to their number, which is below 1000. Cost size times number times the longest sum.
 * Source: B. Streitberg, J. Roehmel (1986), Statistical Software Newsletter 12, 10-17.
 * @example rankSumDistribution([1, 2, 3], 2) // { least: 3, shares: 1/3, 1/3, 1/3 }
 */
export function rankSumDistribution(
  scores: ArrayLike<number>,
  size: number,
): { readonly least: number; readonly shares: Float64Array } {
  const sorted = Float64Array.from(scores).sort();
  const lowest = sorted[0] ?? 0;
  const length = spanOfSums(sorted, size) + 1;
  const rows = Array.from({ length: size + 1 }, () => new Float64Array(length));
  (rows[0] as Float64Array)[0] = 1;
  let base = 0;
  for (let i = 0; i < sorted.length; i++) {
    const shift = (sorted[i] as number) - lowest;
    for (let chosen = Math.min(size, i + 1); chosen >= 1; chosen--) {
      const [into, from] = [rows[chosen] as Float64Array, rows[chosen - 1] as Float64Array];
      for (let sum = length - 1; sum >= shift; sum--) into[sum] = (into[sum] as number) + (from[sum - shift] as number);
    }
    if (i < size) base += shift;
  }
  const counts = (rows[size] as Float64Array).subarray(base);
  const all = counts.reduce((total, count) => total + count, 0);
  return { least: base + size * lowest, shares: counts.map((count) => count / all) };
}

/** Largest sum of `size` scores less `size` times the least score. sorted: ascending. */
export function spanOfSums(sorted: Float64Array, size: number): number {
  let span = 0;
  for (let i = sorted.length - size; i < sorted.length; i++) span += (sorted[i] as number) - (sorted[0] as number);
  return span;
}
