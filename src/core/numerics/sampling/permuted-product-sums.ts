/**
 * Sum of x[i] y[order(i)] for every order of y, equal ones included: n! sums. x, y: finite, one length n from 1 to 10. Each sum is made from its own n
 * products, so that errors do not build up from one order to the next: relative n ulp of sum |x y|.
 * @example permutedProductSums([1, 2], [10, 30]) // 70, 50
 */
export function permutedProductSums(x: ArrayLike<number>, y: ArrayLike<number>): Float64Array {
  const n = x.length;
  let count = 1;
  for (let i = 2; i <= n; i++) count *= i;
  const sums = new Float64Array(count);
  const isUsed = new Uint8Array(n);
  let at = 0;
  const go = (place: number, sum: number): void => {
    if (place === n) {
      sums[at++] = sum;
      return;
    }
    const own = x[place] as number;
    for (let i = 0; i < n; i++) {
      if (isUsed[i] === 1) continue;
      isUsed[i] = 1;
      go(place + 1, sum + own * (y[i] as number));
      isUsed[i] = 0;
    }
  };
  go(0, 0);
  return sums;
}
