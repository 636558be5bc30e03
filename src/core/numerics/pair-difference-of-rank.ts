/**
 * The rank-th smallest of all differences a[i] - b[j], without forming them: bisection between the least and the largest, with a count of the
 * differences up to the middle, until no double lies between. a, b: finite, ascending, differences finite; rank: whole, 1 to the number of pairs.
 * Exact: the result is one of the differences. Cost about 60 times a.length + b.length. Source: counting as in D. B. Johnson, T. Mizoguchi (1978), SIAM J. Comput. 7, 147-153.
 * @example pairDifferenceOfRank([1, 5], [0, 2], 3) // 3 of -1, 1, 3, 5
 */
export function pairDifferenceOfRank(a: Float64Array, b: Float64Array, rank: number): number {
  const upTo = (bound: number): number => {
    let count = 0;
    let first = 0;
    for (let i = 0; i < a.length; i++) {
      while (first < b.length && !((a[i] as number) - (b[first] as number) <= bound)) first++;
      count += b.length - first;
    }
    return count;
  };
  let low = (a[0] as number) - (b[b.length - 1] as number);
  let high = (a[a.length - 1] as number) - (b[0] as number);
  if (upTo(low) >= rank) return low;
  for (;;) {
    const middle = low / 2 + high / 2;
    if (!(middle > low && middle < high)) return high;
    if (upTo(middle) >= rank) high = middle;
    else low = middle;
  }
}
