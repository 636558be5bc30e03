const tiesOf = (values: Float64Array): readonly number[] => {
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts.values()];
};

/** Variance of Kendall's S with ties in both. Source: Kendall (1970), eq. 4.3. */
export function varianceOfKendallS(x: Float64Array, y: Float64Array): number {
  const n = x.length;
  const sum = (ties: readonly number[], of: (t: number) => number) => ties.reduce((total, t) => total + of(t), 0);
  const [t, u] = [tiesOf(x), tiesOf(y)];
  const whole = (k: number) => k * (k - 1) * (2 * k + 5);
  const [pairs, triples] = [(k: number) => k * (k - 1), (k: number) => k * (k - 1) * (k - 2)];
  const first = (whole(n) - sum(t, whole) - sum(u, whole)) / 18;
  const second = n > 2 ? (sum(t, triples) * sum(u, triples)) / (9 * triples(n)) : 0;
  return first + second + (sum(t, pairs) * sum(u, pairs)) / (2 * pairs(n));
}
