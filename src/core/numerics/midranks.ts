/**
 * Ranks from 1, ties sharing the mean of their ranks. x: finite numbers. Source: M. G. Kendall (1970), Rank Correlation Methods, chapter 3.
 * @example midranks([10, 30, 10]) // 1.5, 3, 1.5
 */
export function midranks(x: ArrayLike<number>): Float64Array {
  const order = Array.from(x, (_, i) => i).sort((a, b) => (x[a] as number) - (x[b] as number));
  const ranks = new Float64Array(x.length);
  for (let from = 0; from < order.length; ) {
    let to = from;
    while (to + 1 < order.length && x[order[to + 1] as number] === x[order[from] as number]) to++;
    for (let i = from; i <= to; i++) ranks[order[i] as number] = (from + to) / 2 + 1;
    from = to + 1;
  }
  return ranks;
}
