/**
 * Calls `see` with how often each of n things is drawn, for every way to draw n with replacement, and with the number of draws in order that amount to
 * it: n! / prod counts!. counts is the same object each time. n: whole, 1 to 12 (1,352,078 calls); the weights add up to n^n, all exact.
 */
export function everyMultiset(n: number, see: (counts: Int32Array, weight: number) => void): void {
  const factorials = new Float64Array(n + 1).fill(1);
  for (let i = 2; i <= n; i++) factorials[i] = (factorials[i - 1] as number) * i;
  const counts = new Int32Array(n);
  const go = (place: number, left: number, weight: number): void => {
    if (place === n - 1) {
      counts[place] = left;
      see(counts, weight / (factorials[left] as number));
      return;
    }
    for (let count = 0; count <= left; count++) {
      counts[place] = count;
      go(place + 1, left - count, weight / (factorials[count] as number));
    }
  };
  go(0, n, factorials[n] as number);
}

/** How many ways there are to draw n of n things with replacement, order aside: (2 n - 1)! / (n! (n - 1)!). */
export function multisetsOf(n: number): number {
  let count = 1;
  for (let i = 1; i < n; i++) count = (count * (n + i)) / i;
  return count;
}
