import { atRatio } from "./at-ratio.ts";
import type { GroupedSums } from "./grouped-sums.ts";

/** Minus twice the restricted log likelihood at a variance between and one within groups. */
export function restrictedDeviance(data: GroupedSums, between: number, within: number): number {
  const { logDeterminant, residual } = atRatio(data, between / within);
  const free = data.rows - data.scales.length + 1;
  return free * Math.log(2 * Math.PI * within) + logDeterminant + residual / within;
}
