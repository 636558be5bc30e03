export type Dominance = {
  /** Of each value of a: values of b below it less those above it. */
  readonly rows: Float64Array;
  /** Of each value of b: values of a above it less those below it. */
  readonly columns: Float64Array;
  readonly ties: number;
};

/** How many sorted values lie below `value` (or, with ties, at or below it). */
function below(sorted: Float64Array, value: number, withTies: boolean): number {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle] as number) < value || (withTies && sorted[middle] === value)) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Signs of all differences a - b, summed by row and by column, in n log n. */
export function dominance(a: Float64Array, b: Float64Array): Dominance {
  const [sortedA, sortedB] = [a.slice().sort(), b.slice().sort()];
  let ties = 0;
  const rows = a.map((value) => {
    const [less, notMore] = [below(sortedB, value, false), below(sortedB, value, true)];
    ties += notMore - less;
    return less - (b.length - notMore);
  });
  const columns = b.map((value) => a.length - below(sortedA, value, true) - below(sortedA, value, false));
  return { rows, columns, ties };
}
