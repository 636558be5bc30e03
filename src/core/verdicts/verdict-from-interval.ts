import type { Verdict } from "../base/index.ts";

/**
 * The verdict on "the quantity is at least `bound`" from an interval for it: kept when all of the interval lies at or above the bound,
 * broken when all of it lies below, can't tell otherwise. `low <= high`, all finite, in one unit.
 */
export function verdictFromInterval(low: number, high: number, bound: number): Verdict {
  if (low >= bound) return "kept";
  if (high < bound) return "broken";
  return "cannot-tell";
}
