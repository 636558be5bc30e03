/**
 * Every sum of one term from each list, in no order that matters: as many as the product of their lengths, 1 (zero) for no lists.
 * lists: finite numbers, none empty.
 * @example outerSums([[1, -1], [10, 20, 30]]) // 11, 9, 21, 19, 31, 29
 */
export function outerSums(lists: readonly ArrayLike<number>[]): Float64Array {
  let sums = new Float64Array(1);
  for (const list of lists) {
    const longer = new Float64Array(sums.length * list.length);
    let at = 0;
    for (let j = 0; j < list.length; j++)
      for (let i = 0; i < sums.length; i++) longer[at++] = (sums[i] as number) + (list[j] as number);
    sums = longer;
  }
  return sums;
}
