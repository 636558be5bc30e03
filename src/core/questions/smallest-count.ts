import { bracketedRoot } from "../numerics/index.ts";

const MOST = 1e7;

/**
 * The smallest number of records, not rounded, at which a power that rises with it reaches the target; `least` where it already does there, null where
 * ten million would not do. Relative 1e-12 by Brent's method.
 */
export function smallestCount(powerAt: (count: number) => number, target: number, least: number): number | null {
  if (powerAt(least) >= target) return least;
  let [low, high] = [least, 2 * least];
  while (powerAt(high) < target) {
    if (high >= MOST) return null;
    [low, high] = [high, Math.min(MOST, 2 * high)];
  }
  return bracketedRoot((count) => powerAt(count) - target, low, high);
}

/** Rounded up, but for what rounding of the root alone adds. */
export const wholeCount = (count: number): number => Math.ceil(count - 1e-9 * count);
