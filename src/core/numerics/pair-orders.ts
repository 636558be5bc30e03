/** How many pairs of records x and y put in the same order, in opposite orders, and how many have two values of x, of y. */
export type PairOrders = {
  readonly concordant: number;
  readonly discordant: number;
  readonly untiedX: number;
  readonly untiedY: number;
};

const pairs = (n: number): number => (n * (n - 1)) / 2;

/** Pairs of equal values among values that stand next to each other where they are equal. */
function tiedPairs(n: number, isSame: (i: number) => boolean): number {
  let [tied, run] = [0, 1];
  for (let i = 1; i <= n; i++) {
    if (i < n && isSame(i)) run++;
    else {
      tied += pairs(run);
      run = 1;
    }
  }
  return tied;
}

/** Pairs of which the later is smaller; values come back sorted. Merge sort. */
function inversions(values: Float64Array): number {
  let from: Float64Array = values.slice();
  let to: Float64Array = new Float64Array(values.length);
  let count = 0;
  for (let width = 1; width < values.length; width *= 2) {
    for (let start = 0; start < values.length; start += 2 * width) {
      const [middle, end] = [Math.min(start + width, values.length), Math.min(start + 2 * width, values.length)];
      for (let left = start, right = middle, at = start; at < end; at++)
        if (left < middle && (right >= end || (from[left] as number) <= (from[right] as number)))
          to[at] = from[left++] as number;
        else {
          count += middle - left;
          to[at] = from[right++] as number;
        }
    }
    [from, to] = [to, from];
  }
  values.set(from);
  return count;
}

/**
 * Orders of all pairs, without forming them. x, y: of one length, finite. About n log n steps.
 * Source: W. R. Knight (1966), Journal of the American Statistical Association 61, 436-439.
 */
export function pairOrders(x: Float64Array, y: Float64Array): PairOrders {
  const n = x.length;
  const order = Int32Array.from({ length: n }, (_, i) => i).sort(
    (a, b) => (x[a] as number) - (x[b] as number) || (y[a] as number) - (y[b] as number),
  );
  const [byX, then] = [
    Float64Array.from(order, (i) => x[i] as number),
    Float64Array.from(order, (i) => y[i] as number),
  ];
  const tiedX = tiedPairs(n, (i) => byX[i] === byX[i - 1]);
  const tiedBoth = tiedPairs(n, (i) => byX[i] === byX[i - 1] && then[i] === then[i - 1]);
  const discordant = inversions(then);
  const tiedY = tiedPairs(n, (i) => then[i] === then[i - 1]);
  return {
    concordant: pairs(n) - tiedX - tiedY + tiedBoth - discordant,
    discordant,
    untiedX: pairs(n) - tiedX,
    untiedY: pairs(n) - tiedY,
  };
}
