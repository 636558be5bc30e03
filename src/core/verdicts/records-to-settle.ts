/** Above this many the number says nothing but "far too many". */
const MOST = 1000;

/**
 * How many more records would settle a claim if they go on like those at hand: the half-width of an interval shrinks as 1/sqrt(n), and it
 * must shrink until it no longer reaches the bound: n' = n (halfWidth / |estimate − bound|)^2, less n.
 *
 * `used` >= 1 records, `halfWidth` > 0 and `distance` = |estimate − bound| >= 0 in one unit. Returns a whole number of at least 1, or null when
 * the estimate stands so near the bound that more than a thousand would be needed.
 * Source: derived from the width of a large-sample interval; common practice for planning.
 */
export function recordsToSettle(used: number, halfWidth: number, distance: number): number | null {
  const needed = Math.ceil(used * (halfWidth / distance) ** 2) - used;
  if (needed > MOST) return null;
  return Math.max(1, needed);
}
