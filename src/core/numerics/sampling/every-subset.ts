/**
 * Calls `see` with every choice of `size` out of the places 0 to n - 1, ascending; the list is the same object each time.
 * n, size: whole, 0 <= size <= n. There are n! / (size! (n - size)!) calls.
 */
export function everySubset(n: number, size: number, see: (chosen: Int32Array) => void): void {
  const chosen = Int32Array.from({ length: size }, (_, i) => i);
  for (;;) {
    see(chosen);
    let at = size - 1;
    while (at >= 0 && chosen[at] === n - size + at) at--;
    if (at < 0) return;
    chosen[at] = (chosen[at] as number) + 1;
    for (let i = at + 1; i < size; i++) chosen[i] = (chosen[i - 1] as number) + 1;
  }
}

/** How many choices of `size` out of n there are, n! / (size! (n - size)!); whole while below 2^53. */
export function subsetsOf(n: number, size: number): number {
  let count = 1;
  for (let i = 1; i <= Math.min(size, n - size); i++) count = (count * (n - i + 1)) / i;
  return count < 2 ** 52 ? Math.round(count) : count;
}
